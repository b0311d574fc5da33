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

/** A proof that proves nothing: with a meter not proved itself, or before the power is isolated. */
public final class ProvingDead implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    State state = subject.state();
    State.Moment moment = state.moment();
    for (int step : state.order()) {
      List<Deed> deeds = state.step(step).deeds();
      int proof = first(Verb.PROVE_DEAD, deeds);
      if (proof >= 0) {
        if (first(Verb.KNOWN_SOURCE, deeds) < 0) {
          Step task = state.step(step);
          out.add(Problem.at("meter-not-proved", task.source(), deeds.get(proof).thing().span()));
        }
        moment.enter(step);
        inspect(state.step(step), proof, state, moment, out);
      }
    }
  }

  private static void inspect(Step task, int proof, State state, State.Moment moment, Problems out) {
    for (int deed = 0; deed < proof; deed++) {
      moment.pass();
    }
    if (!moment.isPowerOff()) {
      Problem problem = Problem.at("proved-before-isolating", task.source(), task.deeds().get(proof).thing().span());
      out.add(moment.showLacking(state.facts().of(Fact.POWER_OFF), "").map(problem::shownBy).orElse(problem));
    }
  }

  private static int first(Verb verb, List<Deed> deeds) {
    for (int i = 0; i < deeds.size(); i++) {
      if (deeds.get(i).verb() == verb) {
        return i;
      }
    }
    return -1;
  }
}
