package rungbook.rules.state;

import java.util.List;
import java.util.Optional;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.JointStates;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Witness;
import rungbook.system.Quantity;
import rungbook.tree.Step;

/**
 * Resistance or capacitance is measured while, on some path, power is on; or on a capacitor, or on a motor with one,
 * that may be charged; or volts beside one whose power is off.
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
    return step instanceof Step.MeterCheck check
        && (check.quantity().needsDeadCircuit() || check.quantity().isVolts());
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    inspect((Step.MeterCheck) step, context, point, out);
  }

  private static void inspect(Step.MeterCheck check, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    FactTable facts = context.state().facts();
    if (check.quantity().isVolts()) {
      inspectVolts(check, context, point, out);
      return;
    }
    if (!point.isPowerOff()) {
      report(MEASURED_LIVE, check, point.showLacking(facts.of(Fact.POWER_OFF), ""), out);
      return;
    }
    Optional<JointStates.Arrival> live = LineVoltageLeads.liveAt(check, context);
    if (live.isPresent()) {
      report(MEASURED_LIVE, check, live.get().shown(), out);
    } else if (mayBeCharged(check, context) && !point.must(facts.of(Fact.DISCHARGED_ANY))) {
      report(MEASURED_CHARGED, check, point.showLacking(facts.of(Fact.DISCHARGED_ANY), ""), out);
    }
  }

  /** Control voltage is read beside a capacitor whose own power is off: nothing tells that it is charged. */
  private static void inspectVolts(Step.MeterCheck check, RuleContext context, PathFacts.ProgramPoint point,
      Problems out) {
    String place = FactTable.place(check);
    FactTable facts = context.state().facts();
    boolean charged = context.tree().hazards().capacitorPlaces().contains(place) && check.leads().stream()
        .noneMatch(lead -> Sources.isLineVoltage(context.tree().system(), lead.key()));
    int off = charged ? point.nextMay(Fact.ISOLATED, 0) : FactTable.NONE;
    while (off != FactTable.NONE && !(point.must(off) && context.tree().hazards().feeds(facts.words(off), place))) {
      off = point.nextMay(Fact.ISOLATED, off + 1);
    }
    if (off != FactTable.NONE && !point.must(facts.of(Fact.DISCHARGED_ANY))) {
      report(MEASURED_CHARGED, check, point.showLacking(facts.of(Fact.DISCHARGED_ANY), ""), out);
    }
  }

  private static boolean mayBeCharged(Step.MeterCheck check, RuleContext context) {
    return check.quantity() == Quantity.MICROFARADS
        || check.leads().stream().anyMatch(lead -> context.tree().hazards().charged().contains(lead.key()));
  }

  private static void report(Code code, Step.MeterCheck check, Optional<Witness> shown, Problems out) {
    out.add(Problem.at(code, check.source(), check.quantitySpan()).with("quantity", check.quantity().words())
        .shownBy(shown));
  }
}
