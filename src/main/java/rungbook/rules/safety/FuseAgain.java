package rungbook.rules.safety;

import java.util.List;
import rungbook.action.Condition;
import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.Facts;
import rungbook.rules.flow.State;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Action;
import rungbook.tree.Step;

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
      List<Action> actions = state.step(step).actions();
      moment.enter(step);
      for (Action action : actions) {
        inspect(action, state.step(step), state, moment, out);
        moment.pass();
      }
    }
  }

  private static void inspect(Action action, Step step, State state, State.Moment moment, Problems out) {
    boolean replaces = action.kind().begins(Condition.REPLACED);
    int replaced = replaces ? state.facts().of(Fact.FUSE_REPLACED, action.key()) : Facts.NONE;
    if (moment.may(replaced)) {
      Problem problem = Problem.at("fuse-again", step.source(), action.thing().span()).with("fuse", action.thing().text());
      out.add(moment.showHolding(replaced, "").map(problem::shownBy).orElse(problem));
    }
  }
}
