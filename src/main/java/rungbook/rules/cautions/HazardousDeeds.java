package rungbook.rules.safety;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.DataflowSolver;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.Onward;
import rungbook.source.Span;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** The deeds in a tree that need a caution. Each method answers for one step, by its index. */
final class HazardousDeeds {

  private static final String GAS_VALVE = "gas valve";

  /** What the names of the parts begin with that decide how the burners burn. */
  private static final List<String> BURNER_PARTS = List.of(GAS_VALVE, "inducer", "pressure switch", "limit", "rollout");

  private enum Next { HANDS_GO_IN, POWER_COMES_ON, NEITHER }

  private final Tree tree;
  private final FactTable facts;
  private final Onward handsGoIn;
  private final Onward proved;
  private final DataflowSolver burnerRepaired;

  HazardousDeeds(RuleContext context) {
    tree = context.tree();
    facts = context.state().facts();
    var graph = context.state().graph();
    handsGoIn = Onward.to(graph, step -> next(step, 0) == Next.HANDS_GO_IN, step -> next(step, 0) == Next.NEITHER);
    proved = Onward.to(graph, this::isProved, step -> !(step(step) instanceof Step.Check));
    long[] repairs = new long[graph.size()];
    Arrays.setAll(repairs, step -> repairsBurners(step) ? 1 : 0);
    burnerRepaired = DataflowSolver.solve(graph, 0, repairs, new long[graph.size()], null, null);
  }

  Optional<Span> inAttic(int step) {
    boolean attic = tree.system().map(system -> system.locations().get(FactTable.place(step(step))))
        .filter(Vocabulary.Location::isInAttic).isPresent();
    return attic ? step(step).at().map(NameRef::span) : Optional.empty();
  }

  /** A source is switched off, and before it is on again hands or leads go behind a panel. */
  Optional<Span> isolating(int step) {
    List<Action> actions = step(step).actions();
    for (int i = 0; i < actions.size(); i++) {
      if (actions.get(i).kind().begins(EquipmentCondition.ISOLATED)) {
        Next next = next(step, i + 1);
        boolean goIn = next == Next.HANDS_GO_IN || (next == Next.NEITHER && handsGoIn.after(step));
        return goIn ? Optional.of(actions.get(i).thing().span()) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  Optional<Span> touchingCharge(int step) {
    if (step(step) instanceof Step.MeterCheck check && check.quantity().needsDeadCircuit()) {
      return check.leads().stream().filter(lead -> tree.hazards().charged().contains(lead.key())).findFirst()
          .map(NameRef::span);
    }
    return step(step).actions().stream()
        .filter(action -> action.touches() || action.kind().begins(EquipmentCondition.DISCHARGED))
        .filter(action -> facts.isCapacitor(action.key()) || tree.hazards().charged().contains(action.key()))
        .findFirst().map(action -> action.thing().span());
  }

  Optional<Span> workingOnGas(int step) {
    return step(step).actions().stream().filter(action -> action.touches() && isCalled(GAS_VALVE, action.key()))
        .findFirst().map(action -> action.thing().span());
  }

  /** The last check before the end, after such a part was repaired. */
  Optional<Span> provingBurners(int step) {
    boolean last = step(step) instanceof Step.Check && proved.after(step) && burnerRepaired.at(step) != 0;
    return last ? Optional.of(step(step).header().titleSpan()) : Optional.empty();
  }

  /** A path by the repair to the check that proves it. */
  int[] pathByRepair(int step) {
    return burnerRepaired.pathTo(step, 1);
  }

  private Step step(int step) {
    return tree.steps().get(step);
  }

  private boolean isProved(int step) {
    return step(step) instanceof Step.End end && end.result() == Step.Result.REPAIRED_AND_PROVED;
  }

  private boolean repairsBurners(int step) {
    return step(step).actions().stream().filter(action -> action.kind().begins(EquipmentCondition.REPAIRED))
        .anyMatch(action -> burnsGas() && BURNER_PARTS.stream().anyMatch(part -> isCalled(part, action.key())));
  }

  /** Electric heat has limits too. */
  private boolean burnsGas() {
    return tree.system().isEmpty()
        || tree.system().get().parts().keySet().stream().anyMatch(part -> isCalled(GAS_VALVE, part));
  }

  private static boolean isCalled(String name, String key) {
    return key.equals(name) || key.startsWith(name + " ");
  }

  /** What a step does first, from one of its actions on. */
  private Next next(int step, int from) {
    if (step(step) instanceof Step.MeterCheck check && check.quantity().needsDeadCircuit()) {
      return Next.HANDS_GO_IN;
    }
    return step(step).actions().stream().skip(from).flatMap(action -> action.changes().stream()).map(this::next)
        .filter(next -> next != Next.NEITHER).findFirst().orElse(Next.NEITHER);
  }

  private Next next(StateChange change) {
    if (change instanceof StateChange.Begin begin && begin.condition().isBehindPanel()) {
      return Next.HANDS_GO_IN;
    }
    boolean on = change instanceof StateChange.End end && end.condition() == EquipmentCondition.ISOLATED
        && facts.of(Fact.ISOLATED, end.key()) != FactTable.NONE;
    return on ? Next.POWER_COMES_ON : Next.NEITHER;
  }
}
