package rungbook.rules.safety;

import java.util.List;
import java.util.Optional;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.DataflowSolver;
import rungbook.rules.flow.FlowGraph;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Quantity;
import rungbook.system.Terminal;
import rungbook.tree.Action;
import rungbook.tree.Readings;
import rungbook.tree.Step;

/**
 * A breaker is switched on although, on some path, ohms to ground read outside the expected window, and nothing was
 * replaced or repaired since.
 */
public final class BreakerOntoGround implements Rule {

  static final Code BREAKER_ONTO_GROUND = Code.of("breaker-onto-ground");

  @Override
  public List<Code> codes() {
    return List.of(BREAKER_ONTO_GROUND);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    FlowGraph graph = context.state().graph();
    if (context.state().isTooLarge() || context.tree().steps().stream().noneMatch(BreakerOntoGround::readsGround)) {
      return;
    }
    DataflowSolver grounded = solve(graph, context);
    for (int step : graph.order()) {
      if (grounded.at(step) != 0) {
        restored(context.state().step(step), context).ifPresent(breaker -> out.add(problem(breaker, step, context)
            .shownBy(context.state().show(grounded.pathTo(step, 1), step))));
      }
    }
  }

  private static Problem problem(Action breaker, int step, RuleContext context) {
    return Problem.at(BREAKER_ONTO_GROUND, context.state().step(step).source(), breaker.thing().span())
        .with("breaker", breaker.thing().text());
  }

  private static DataflowSolver solve(FlowGraph graph, RuleContext context) {
    long[] repaired = new long[graph.size()];
    long[] bad = new long[graph.ways()];
    long[] good = new long[graph.ways()];
    for (int number : graph.order()) {
      Step step = context.state().step(number);
      repaired[number] = step.actions().stream().anyMatch(BreakerOntoGround::repairs) ? 1 : 0;
      for (int way = 0; way < step.ways().size() && readsGround(step); way++) {
        boolean inside = isInside(way, (Step.MeterCheck) step, context.readings().get(number));
        (inside ? good : bad)[graph.firstWay(number) + way] = 1;
      }
    }
    return DataflowSolver.solve(graph, 0, new long[graph.size()], repaired, bad, good);
  }

  private static boolean readsGround(Step step) {
    return step instanceof Step.MeterCheck check && check.quantity() == Quantity.OHMS && check.expected().isPresent()
        && check.leads().stream().anyMatch(lead -> lead.key().equals(Terminal.GROUND));
  }

  /** Whether a way takes the expected window, which may be open at the top. */
  private static boolean isInside(int way, Step.MeterCheck check, Optional<Readings> readings) {
    if (readings.isEmpty()) {
      return true;
    }
    Readings.Stretch window = readings.get().stretch(check.expected().orElseThrow());
    boolean overload = check.expected().get().high().isEmpty()
        && readings.get().wayOfOverload().stream().anyMatch(one -> one == way);
    return overload || readings.get().wayOf(window.from()).stream().anyMatch(one -> one == way)
        || readings.get().wayOf(window.to()).stream().anyMatch(one -> one == way);
  }

  private static boolean repairs(Action action) {
    return action.kind().begins(EquipmentCondition.REPAIRED);
  }

  /** The breaker that a step switches on before it repairs anything. */
  private static Optional<Action> restored(Step step, RuleContext context) {
    return step.actions().stream().takeWhile(action -> !repairs(action))
        .filter(action -> action.kind().ends(EquipmentCondition.ISOLATED))
        .filter(action -> context.tree().system().filter(system -> system.isKind(action.key(), "breaker")).isPresent())
        .findFirst();
  }
}
