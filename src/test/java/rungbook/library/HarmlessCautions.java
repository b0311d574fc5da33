package rungbook.library;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.DataflowSolver;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.FlowGraph;
import rungbook.rules.safety.OpenUnit;
import rungbook.rules.state.Sources;
import rungbook.system.Quantity;
import rungbook.tree.Step;

/** Why a step without one of its cautions, which no rule demands there, hurts nobody. */
final class HarmlessCautions {

  private static final Set<String> MOVING = Set.of("moving blower", "moving fan");

  private final String caution;
  private final RuleContext context;
  private final int number;
  private final Step step;

  private HarmlessCautions(String caution, RuleContext context, int number) {
    this.caution = caution;
    this.context = context;
    this.number = number;
    this.step = context.state().step(number);
  }

  /** @param caution its key */
  static Optional<String> why(String caution, RuleContext context, int number) {
    var place = new HarmlessCautions(caution, context, number);
    Map<String, Boolean> reasons = new LinkedHashMap<>();
    reasons.put("it is shown before", place.isShownBefore());
    reasons.put("nothing is done in the step", place.isWithoutDeeds());
    reasons.put("what moves is behind its panel, or has no power", MOVING.contains(caution) && place.isGuarded());
    reasons.put("every panel is on", caution.equals("line voltage") && place.isClosed());
    reasons.put("there is nothing hot", caution.equals("hot surfaces") && place.hasNoLineVoltage());
    reasons.put("no burner is lit", caution.equals("burner flame") && place.isWithoutFlame());
    reasons.put("a clamp touches no terminal", caution.equals("live control voltage") && place.isClamp());
    return reasons.entrySet().stream().filter(Map.Entry::getValue).map(Map.Entry::getKey).findFirst();
  }

  private boolean isShownBefore() {
    FlowGraph graph = context.state().graph();
    long[] shown = new long[graph.size()];
    Arrays.setAll(shown, one -> context.state().step(one).header().cautions().stream()
        .anyMatch(named -> named.key().equals(caution)) ? 1 : 0);
    return DataflowSolver.solve(graph, 1, new long[graph.size()], shown, null, null).at(number) == 0;
  }

  /** A finding that only says what is wrong. */
  private boolean isWithoutDeeds() {
    return step instanceof Step.Finding && step.actions().isEmpty() && step.guarded().isEmpty();
  }

  /** The panel is on, or the power off, before, during and after the step; nor does it take the panel off. */
  private boolean isGuarded() {
    return new OpenUnit(context).liveAt(number).isEmpty() && step.actions().stream()
        .noneMatch(action -> action.kind().begins(EquipmentCondition.OPEN));
  }

  private boolean isClosed() {
    var point = context.state().point();
    point.enter(number);
    return point.nextMay(Fact.OPEN, 0) == FactTable.NONE && isGuarded();
  }

  private boolean hasNoLineVoltage() {
    return context.tree().system()
        .filter(system -> !Sources.hasLineVoltage(system, FactTable.place(step))).isPresent();
  }

  private boolean isWithoutFlame() {
    return context.state().joint().at(number).stream().noneMatch(arrival -> context.state().joint()
        .settle(arrival.after(step.actions().size())).stream()
        .anyMatch(settled -> settled.loadsOn().contains("gas valve")));
  }

  private boolean isClamp() {
    return step instanceof Step.MeterCheck check && check.quantity() == Quantity.AC_AMPS;
  }
}
