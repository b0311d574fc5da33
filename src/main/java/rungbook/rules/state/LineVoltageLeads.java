package rungbook.rules.state;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.JointStates;
import rungbook.source.Problem;
import rungbook.system.Terminal;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** Whether the system's wiring shows line-voltage leads dead or live, in a state that a path leads to. */
final class LineVoltageLeads {

  private LineVoltageLeads() {}

  /** The leads are dead because a source is off. */
  static Optional<Problem> deadAt(Step.MeterCheck check, RuleContext context) {
    List<Terminal> leads = of(check, context);
    return arrivals(check, leads, context).filter(arrival -> isDead(leads, arrival.after(0), context)).findFirst()
        .map(arrival -> problem(check, arrival, context));
  }

  /** A lead is live. */
  static Optional<JointStates.Arrival> liveAt(Step.MeterCheck check, RuleContext context) {
    List<Terminal> leads = of(check, context);
    return arrivals(check, leads, context).filter(arrival -> isLive(leads, arrival.after(0), context)).findFirst();
  }

  private static List<Terminal> of(Step.MeterCheck check, RuleContext context) {
    return check.leads().stream().map(NameRef::key)
        .filter(lead -> Sources.isLineVoltage(context.tree().system(), lead))
        .map(lead -> new Terminal(lead, FactTable.place(check))).toList();
  }

  private static Stream<JointStates.Arrival> arrivals(Step.MeterCheck check, List<Terminal> leads,
      RuleContext context) {
    return leads.isEmpty() || context.tree().circuits().isEmpty() ? Stream.empty()
        : context.state().joint().at(context.tree().steps().indexOf(check)).stream();
  }

  /** Whether all leads are dead with the sources that are off, in every variant, and one would be live with them on. */
  private static boolean isDead(List<Terminal> leads, BitSet state, RuleContext context) {
    BitSet on = (BitSet) state.clone();
    isolated(state, context).forEach(on::clear);
    return !on.equals(state) && !isLive(leads, state, context) && isLive(leads, on, context);
  }

  private static boolean isLive(List<Terminal> leads, BitSet state, RuleContext context) {
    return context.state().joint().settle(state).stream().anyMatch(settled -> leads.stream().anyMatch(settled::isLive));
  }

  private static Problem problem(Step.MeterCheck check, JointStates.Arrival arrival, RuleContext context) {
    int source = isolated(arrival.after(0), context).findFirst().orElseThrow();
    return Problem.at(LiveAfterIsolating.LIVE_AFTER_ISOLATING, check.source(), check.expectedSpan())
        .with("source", context.state().facts().words(source)).with("quantity", check.quantity().words())
        .shownBy(arrival.shown());
  }

  private static IntStream isolated(BitSet state, RuleContext context) {
    return state.stream().filter(fact -> context.state().facts().isOf(Fact.ISOLATED, fact));
  }
}
