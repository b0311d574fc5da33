package rungbook.rules.safety;

import java.util.List;
import rungbook.action.Condition;
import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.State;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Action;
import rungbook.tree.Step;

/** A proof that proves nothing: with a meter not proved itself, or before the power is isolated. */
public final class ProvingDead implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    State state = subject.state();
    State.Moment moment = state.moment();
    for (int step : state.order()) {
      List<Action> actions = state.step(step).actions();
      int proof = first(Condition.PROVED_DEAD, actions);
      if (proof >= 0) {
        if (first(Condition.METER_PROVED, actions) < 0) {
          Step task = state.step(step);
          out.add(Problem.at("meter-not-proved", task.source(), actions.get(proof).thing().span()));
        }
        moment.enter(step);
        inspect(state.step(step), proof, state, moment, out);
      }
    }
  }

  private static void inspect(Step task, int proof, State state, State.Moment moment, Problems out) {
    for (int action = 0; action < proof; action++) {
      moment.pass();
    }
    if (!moment.isPowerOff()) {
      Problem problem = Problem.at("proved-before-isolating", task.source(), task.actions().get(proof).thing().span());
      out.add(moment.showLacking(state.facts().of(Fact.POWER_OFF), "").map(problem::shownBy).orElse(problem));
    }
  }

  private static int first(Condition begun, List<Action> actions) {
    for (int i = 0; i < actions.size(); i++) {
      if (actions.get(i).kind().begins(begun)) {
        return i;
      }
    }
    return -1;
  }
}
