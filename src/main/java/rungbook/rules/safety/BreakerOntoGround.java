package rungbook.rules.safety;

import java.util.List;
import java.util.Optional;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.DataflowSolver;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.FlowGraph;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.system.Terminal;
import rungbook.tree.Action;
import rungbook.tree.Quantity;
import rungbook.tree.Readings;
import rungbook.tree.Step;

/**
 * A breaker, or another power switch that feeds the place, is switched on although, on some path, ohms to ground read
 * outside the expected window there, and nothing was replaced or repaired since. To repair a switch or a fuse takes no
 * ground away. Places beyond the 64th with such a reading are not followed.
 */
public final class BreakerOntoGround implements Rule {

  private static final long ALL = -1;
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
    List<String> places = context.tree().steps().stream().filter(BreakerOntoGround::readsGround)
        .map(FactTable::place).distinct().limit(Long.SIZE).toList();
    DataflowSolver grounded = solve(graph, places, context);
    for (int step : graph.order()) {
      report(step, grounded, places, context, out);
    }
  }

  private static void report(int step, DataflowSolver grounded, List<String> places, RuleContext context,
      Problems out) {
    for (int place = 0; place < places.size(); place++) {
      Optional<Action> on = (grounded.at(step) & 1L << place) == 0 ? Optional.empty()
          : restored(context.state().step(step), places.get(place), context);
      if (on.isPresent()) {
        int[] path = grounded.pathTo(step, 1L << place);
        out.add(problem(on.get(), step, context).shownBy(context.state().show(path, step)));
        return;
      }
    }
  }

  private static Problem problem(Action breaker, int step, RuleContext context) {
    return Problem.at(BREAKER_ONTO_GROUND, context.state().step(step).source(), breaker.thing().span())
        .with("breaker", breaker.thing().text());
  }

  private static DataflowSolver solve(FlowGraph graph, List<String> places, RuleContext context) {
    long[] repaired = new long[graph.size()];
    long[] bad = new long[graph.ways()];
    long[] good = new long[graph.ways()];
    for (int number : graph.order()) {
      Step step = context.state().step(number);
      repaired[number] = step.actions().stream().anyMatch(action -> repairs(action, context)) ? ALL : 0;
      for (int way = 0; way < step.ways().size() && readsGround(step); way++) {
        boolean inside = isInside(way, (Step.MeterCheck) step, context.readings().get(number));
        (inside ? good : bad)[graph.firstWay(number) + way] = bit(places.indexOf(FactTable.place(step)));
      }
    }
    return DataflowSolver.solve(graph, 0, new long[graph.size()], repaired, bad, good);
  }

  private static long bit(int place) {
    return place < 0 ? 0 : 1L << place;
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

  private static boolean repairs(Action action, RuleContext context) {
    return action.kind().begins(EquipmentCondition.REPAIRED) && !context.state().facts().isSource(action.key())
        && context.tree().system().filter(system -> system.isKind(action.key(), "fuse")).isEmpty();
  }

  /** The power switch of a place that a step switches on before it repairs anything. */
  private static Optional<Action> restored(Step step, String place, RuleContext context) {
    return step.actions().stream().takeWhile(action -> !repairs(action, context))
        .filter(action -> action.kind().ends(EquipmentCondition.ISOLATED))
        .filter(action -> context.state().facts().isSource(action.key())
            && context.tree().hazards().feeds(action.key(), place))
        .findFirst();
  }
}
