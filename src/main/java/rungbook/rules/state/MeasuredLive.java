package rungbook.rules.state;

import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.State;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Quantity;
import rungbook.tree.Step;

/** Resistance or capacitance is measured where, on some path, power is on; or capacitance on a capacitor that may hold its charge. */
public final class MeasuredLive implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    State state = subject.state();
    State.Moment moment = state.moment();
    for (int step : state.order()) {
      if (state.step(step) instanceof Step.MeterCheck check && check.quantity().needsDeadCircuit()) {
        moment.enter(step);
        inspect(check, state, moment, out);
      }
    }
  }

  private static void inspect(Step.MeterCheck check, State state, State.Moment moment, Problems out) {
    if (!moment.isPowerOff()) {
      report("measured-live", check, state.facts().of(Fact.POWER_OFF), moment, out);
    } else if (check.quantity() == Quantity.MICROFARADS && !moment.must(state.facts().of(Fact.DISCHARGED_ANY))) {
      report("measured-charged", check, state.facts().of(Fact.DISCHARGED_ANY), moment, out);
    }
  }

  private static void report(String code, Step.MeterCheck check, int lacking, State.Moment moment, Problems out) {
    Problem problem = Problem.at(code, check.source(), check.quantitySpan()).with("quantity", check.quantity().words());
    out.add(moment.showLacking(lacking, "").map(problem::shownBy).orElse(problem));
  }
}
