package rungbook.rules.cautions;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.DataflowSolver;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.JointStates;
import rungbook.rules.flow.Onward;
import rungbook.rules.flow.PathFacts;
import rungbook.rules.state.Sources;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** The deeds in a tree that need a caution. Each method answers for one step, by its index. */
final class HazardousDeeds {

  private static final String GAS_VALVE = "gas valve";

  /** What the names of the parts begin with that decide how the burners burn. */
  private static final List<String> BURNER_PARTS = List.of(GAS_VALVE, "inducer", "pressure switch", "limit", "rollout",
      "vent");

  private static final List<String> WET_THINGS = List.of("float switch", "drain pan");

  private enum Next { HANDS_GO_IN, POWER_COMES_ON, NEITHER }

  /** What the names of the parts begin with that burn skin after a call for heat. */
  private static final List<String> HOT_PARTS = List.of("igniter", "flame sensor", "element", "burner");

  private static final List<String> WARM_PARTS = List.of("inducer", "vent");

  private final Tree tree;
  private final PathFacts state;
  private final HazardousPlaces places;
  private final HazardousSights sights;
  private final FactTable facts;
  private final boolean burnsGas;
  private final Onward handsGoIn;
  private final Onward proved;
  private final DataflowSolver burnerRepaired;

  HazardousDeeds(RuleContext context) {
    tree = context.tree();
    places = new HazardousPlaces(context);
    sights = new HazardousSights(tree, places);
    state = context.state();
    facts = state.facts();
    burnsGas = burnsGas(tree);
    var graph = state.graph();
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

  HazardousPlaces places() {
    return places;
  }

  HazardousSights sights() {
    return sights;
  }

  /** All leads of a live reading are on terminals without line voltage; ground alone is not live. */
  Optional<Span> leadsOnControl(int step) {
    return step(step) instanceof Step.MeterCheck check && check.quantity().isVolts()
        && check.leads().stream().allMatch(lead -> isControl(lead.key()))
            ? check.leads().stream().findFirst().map(NameRef::span) : Optional.empty();
  }

  Optional<Span> taggingOut(int step) {
    return first(step, action -> action.kind().begins(EquipmentCondition.TAGGED_OUT));
  }

  /** A pull-out is pushed in by hand, past its bare line side. */
  Optional<Span> pushingIn(int step) {
    return first(step, action -> action.kind().ends(EquipmentCondition.ISOLATED)
        && tree.system().map(system -> system.controls().get(action.key()))
            .filter(Vocabulary.Control::isPullOut).isPresent());
  }

  /** A switch is defeated, or put back to work with the power on. */
  Optional<Span> defeating(int step) {
    boolean off = first(step, action -> action.kind().begins(EquipmentCondition.ISOLATED)).isPresent();
    return first(step, action -> action.kind().begins(EquipmentCondition.BYPASSED)
        || (!off && action.kind().ends(EquipmentCondition.BYPASSED)
            && facts.of(Fact.BYPASSED, action.key()) != FactTable.NONE));
  }

  /** A breaker is turned on: it may close onto a fault. */
  Optional<Span> turningBreakerOn(int step) {
    return first(step, action -> action.kind().ends(EquipmentCondition.ISOLATED)
        && (" " + action.key()).endsWith(" breaker"));
  }

  /** Power comes on while, on some path, a switch is defeated and stays so. */
  Optional<Span> runningDefeated(int step) {
    Optional<Span> source = first(step,
        action -> action.kind().ends(EquipmentCondition.ISOLATED) && facts.isSource(action.key()));
    return source.isPresent() && isDefeatedAfter(step) ? source : Optional.empty();
  }

  private boolean isDefeatedAfter(int step) {
    PathFacts.ProgramPoint point = state.point();
    point.enter(step);
    point.finish();
    return point.nextMay(Fact.BYPASSED, 0) != FactTable.NONE;
  }

  /** The same in a furnace: with its door off it can draw flue gas into the room. */
  Optional<Span> burningDefeated(int step) {
    return burnsGas ? runningDefeated(step) : Optional.empty();
  }

  Optional<Span> openingPanel(int step) {
    return first(step, action -> action.kind().begins(EquipmentCondition.OPEN));
  }

  /** A hand is on it, or a lead is on what glows. */
  Optional<Span> touchingHot(int step) {
    Optional<Span> touched = first(step, action -> isAmong(HOT_PARTS, action.key())
        || (isAmong(WARM_PARTS, action.key()) && worksOn(action)));
    return touched.isPresent() || !(step(step) instanceof Step.MeterCheck check) ? touched
        : check.leads().stream().filter(lead -> isAmong(HOT_PARTS, lead.key())).findFirst().map(NameRef::span);
  }

  private static boolean worksOn(Action action) {
    return action.touches() || action.kind().begins(EquipmentCondition.REPAIRED);
  }

  private static boolean isAmong(List<String> names, String key) {
    return names.stream().anyMatch(name -> isCalled(name, key));
  }

  /** An air filter is beside the blower, often without a door between. */
  Optional<Span> handlingFilter(int step) {
    return places.isPowerOff(step) ? Optional.empty()
        : first(step, action -> action.kind().begins(EquipmentCondition.REPAIRED) && action.key().equals("air filter"));
  }

  /** The burners light because of what the step does. */
  Optional<Span> lightingBurners(int step) {
    return lighting(step).map(
        arrival -> step(step).actions().get(places.turningOn(step, HazardousDeeds::isGas, arrival)).thing().span());
  }

  Optional<Witness> pathToLighting(int step) {
    return lighting(step).flatMap(JointStates.Arrival::shown);
  }

  private Optional<JointStates.Arrival> lighting(int step) {
    return burnsGas ? places.turnsOn(step, HazardousDeeds::isGas) : Optional.empty();
  }

  Optional<Span> workingInWater(int step) {
    return first(step, action -> worksOn(action) && WET_THINGS.contains(action.key()));
  }

  /** Somebody smells for gas, or gas was smelled and everybody leaves. */
  Optional<Span> meetingGas(int step) {
    return step(step) instanceof Step.Finding finding && finding.evacuate()
        ? Optional.of(finding.header().titleSpan()) : sights.smellingGas(step);
  }

  Optional<Span> touchingCharge(int step) {
    if (step(step) instanceof Step.MeterCheck check && check.quantity().needsDeadCircuit()) {
      return check.leads().stream().filter(lead -> tree.hazards().charged().contains(lead.key())).findFirst()
          .map(NameRef::span);
    }
    return first(step, action -> (action.touches() || action.kind().begins(EquipmentCondition.DISCHARGED))
        && (facts.holdsCharge(action.key()) || tree.hazards().charged().contains(action.key())));
  }

  Optional<Span> workingOnGas(int step) {
    return first(step, action -> action.touches() && isCalled(GAS_VALVE, action.key()));
  }

  /** The last check before the end, after such a part was repaired. */
  Optional<Span> provingBurners(int step) {
    boolean last = step(step) instanceof Step.Check && proved.after(step) && burnerRepaired.at(step) != 0;
    return last ? Optional.of(step(step).header().titleSpan()) : Optional.empty();
  }

  /** A path by the repair to the check that proves it. */
  Optional<Witness> pathByRepair(int step) {
    return state.show(burnerRepaired.pathTo(step, 1), step);
  }

  Optional<Witness> shortestPath(int step) {
    return state.show(state.graph().shortestTo(step), step);
  }

  private Step step(int step) {
    return tree.steps().get(step);
  }

  private Optional<Span> first(int step, Predicate<Action> demanding) {
    for (Action action : step(step).actions()) {
      if (demanding.test(action)) {
        return Optional.of(action.thing().span());
      }
    }
    return Optional.empty();
  }

  private boolean isControl(String point) {
    return tree.system().filter(system -> system.points().containsKey(point)).isPresent()
        && !point.equals(Terminal.GROUND) && !Sources.isLineVoltage(tree.system(), point);
  }

  private boolean isProved(int step) {
    return step(step) instanceof Step.End end && end.result() == Step.Result.REPAIRED_AND_PROVED;
  }

  private boolean repairsBurners(int step) {
    return burnsGas && first(step, action -> action.kind().begins(EquipmentCondition.REPAIRED)
        && BURNER_PARTS.stream().anyMatch(part -> isCalled(part, action.key()))).isPresent();
  }

  /** Electric heat has limits too. */
  private static boolean burnsGas(Tree tree) {
    return tree.system().isEmpty()
        || tree.system().get().parts().keySet().stream().anyMatch(part -> isCalled(GAS_VALVE, part));
  }

  private static boolean isGas(String key) {
    return isCalled(GAS_VALVE, key);
  }

  private static boolean isCalled(String name, String key) {
    return key.equals(name) || key.startsWith(name + " ");
  }

  /** What a step does first, from one of its actions on. */
  private Next next(int step, int from) {
    if (step(step) instanceof Step.MeterCheck check && check.quantity().needsDeadCircuit()) {
      return Next.HANDS_GO_IN;
    }
    List<Action> actions = step(step).actions();
    for (int i = from; i < actions.size(); i++) {
      for (StateChange change : actions.get(i).changes()) {
        Next next = next(change);
        if (next != Next.NEITHER) {
          return next;
        }
      }
    }
    return Next.NEITHER;
  }

  private Next next(StateChange change) {
    if (change instanceof StateChange.Begin begin && (begin.condition().isBehindPanel()
        || begin.condition() == EquipmentCondition.OPEN || begin.condition() == EquipmentCondition.REPAIRED)) {
      return Next.HANDS_GO_IN;
    }
    boolean on = change instanceof StateChange.End end && end.condition() == EquipmentCondition.ISOLATED
        && facts.of(Fact.ISOLATED, end.key()) != FactTable.NONE;
    return on ? Next.POWER_COMES_ON : Next.NEITHER;
  }
}
