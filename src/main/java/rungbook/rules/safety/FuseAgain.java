package rungbook.rules.safety;

import java.util.List;
import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.State;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Deed;
import rungbook.tree.Step;
import rungbook.tree.Verb;

/** A fuse is replaced a second time on a path, and nobody has looked for the short: no ohms, nothing disconnected in between. */
public final class FuseAgain implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    State state = subject.state();
    if (!state.facts().any(Fact.FUSE_REPLACED)) {
      return;
    }
    State.Moment moment = state.moment();
    for (int step : state.order()) {
      List<Deed> deeds = state.step(step).deeds();
      moment.enter(step);
      for (Deed deed : deeds) {
        inspect(deed, state.step(step), state, moment, out);
        moment.pass();
      }
    }
  }

  private static void inspect(Deed deed, Step step, State state, State.Moment moment, Problems out) {
    int replaced = deed.verb() == Verb.REPLACE ? state.facts().of(Fact.FUSE_REPLACED, deed.thing().key()) : -1;
    if (moment.may(replaced)) {
      Problem problem = Problem.at("fuse-again", step.source(), deed.thing().span()).with("fuse", deed.thing().text());
      out.add(moment.showHolding(replaced, "").map(problem::shownBy).orElse(problem));
    }
  }
}
