package rungbook.rules.state;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Quantity;
import rungbook.tree.Step;

/**
 * Resistance or capacitance is measured while, on some path, power is on; or capacitance on a capacitor that may be
 * charged.
 */
public final class MeasuredLive extends StateRule {

  static final Code MEASURED_CHARGED = Code.of("measured-charged");
  static final Code MEASURED_LIVE = Code.of("measured-live");

  @Override
  public List<Code> codes() {
    return List.of(MEASURED_CHARGED, MEASURED_LIVE);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step instanceof Step.MeterCheck check && check.quantity().needsDeadCircuit();
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    inspect((Step.MeterCheck) step, context.state(), point, out);
  }

  private static void inspect(Step.MeterCheck check, PathFacts state, PathFacts.ProgramPoint point, Problems out) {
    if (!point.isPowerOff()) {
      report(MEASURED_LIVE, check, state.facts().of(Fact.POWER_OFF), point, out);
    } else if (check.quantity() == Quantity.MICROFARADS && !point.must(state.facts().of(Fact.DISCHARGED_ANY))) {
      report(MEASURED_CHARGED, check, state.facts().of(Fact.DISCHARGED_ANY), point, out);
    }
  }

  private static void report(Code code, Step.MeterCheck check, int lacking, PathFacts.ProgramPoint point,
      Problems out) {
    Problem problem = Problem.at(code, check.source(), check.quantitySpan()).with("quantity", check.quantity().words());
    out.add(problem.shownBy(point.showLacking(lacking, "")));
  }
}
