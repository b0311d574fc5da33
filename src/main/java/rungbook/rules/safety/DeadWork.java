package rungbook.rules.safety;

import java.util.List;
import rungbook.action.Condition;
import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.Facts;
import rungbook.rules.flow.State;
import rungbook.rules.state.Sources;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Action;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * A part is touched before the power is isolated, before it is proved dead, or before its charge is gone; the first of these
 * that is missing on some path is reported. To switch power on cancels all three.
 */
public final class DeadWork implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    State state = subject.state();
    State.Moment moment = state.moment();
    for (int step : state.order()) {
      List<Action> actions = state.step(step).actions();
      if (!actions.isEmpty()) {
        moment.enter(step);
        for (Action action : actions) {
          inspect(action, step, subject.tree(), state, moment, out);
          moment.pass();
        }
      }
    }
  }

  private static void inspect(Action action, int at, Tree tree, State state, State.Moment moment, Problems out) {
    if (!action.touches() && !action.kind().begins(Condition.DISCHARGED)) {
      return;
    }
    Facts facts = state.facts();
    Step step = state.step(at);
    String key = action.key();
    int proved = proved(step, tree, facts);
    if (!moment.isPowerOff()) {
      report("touched-live", action, step, facts.of(Fact.POWER_OFF), moment, out);
    } else if (action.touches() && !moment.must(proved)) {
      report("not-proved-dead", action, step, proved, moment, out);
    } else if (action.touches() && facts.isCapacitor(key) && !moment.must(facts.of(Fact.DISCHARGED, key))) {
      report("capacitor-charged", action, step, facts.of(Fact.DISCHARGED, key), moment, out);
    }
  }

  /** Where line voltage can be met the proof belongs to that very place; where only control voltage is, one anywhere will do. */
  private static int proved(Step step, Tree tree, Facts facts) {
    boolean here = tree.system().isPresent() && Sources.hasLineVoltage(tree.system().get(), Facts.place(step));
    return here ? facts.of(Fact.PROVED_AT, Facts.place(step)) : facts.of(Fact.PROVED_ANYWHERE);
  }

  private static void report(String code, Action action, Step step, int lacking, State.Moment moment, Problems out) {
    Problem problem = Problem.at(code, step.source(), action.thing().span()).with("thing", action.thing().text());
    out.add(moment.showLacking(lacking, "").map(problem::shownBy).orElse(problem));
  }
}
