package rungbook.rules.cautions;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.DataflowSolver;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.FlowGraph;
import rungbook.rules.flow.JointStates;
import rungbook.rules.flow.PathFacts;
import rungbook.rules.safety.LineVoltage;
import rungbook.rules.safety.OpenUnit;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.system.Part;
import rungbook.system.SystemVariants;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** The places in a tree that need a caution. Each method answers for one step, by its index. */
final class HazardousPlaces {

  private static final Function<SystemVariants, Set<String>> HEATERS = HazardousPlaces::heaters;
  private static final Function<SystemVariants, Map<String, Set<String>>> MOTORS = HazardousPlaces::motors;

  private final RuleContext context;
  private final OpenUnit unit;
  private final Map<Integer, Optional<JointStates.Arrival>> live = new HashMap<>();
  private final DataflowSolver unwarned;

  HazardousPlaces(RuleContext context) {
    this.context = context;
    this.unit = new OpenUnit(context);
    this.unwarned = unwarned(context.state());
  }

  /** Leads on line voltage are reported by {@link LineVoltageUnsaid}. */
  Optional<Span> live(int step) {
    return LineVoltage.met(step(step), context.tree()).isPresent() ? Optional.empty()
        : liveAt(step).flatMap(arrival -> place(step));
  }

  Optional<Span> besideBlower(int step) {
    return besideMotor("blower", step);
  }

  Optional<Span> besideFan(int step) {
    return besideMotor("fan", step);
  }

  /** @param word in the motor's name */
  private Optional<Span> besideMotor(String word, int step) {
    return hasMotor(word, FactTable.place(step(step)))
        ? liveAt(step).flatMap(arrival -> place(step)) : Optional.empty();
  }

  /** A panel comes off line voltage: only then can anybody prove it dead. */
  Optional<Span> openingLine(int step) {
    return step(step).actions().stream().anyMatch(action -> action.kind().begins(EquipmentCondition.OPEN)
        && OpenUnit.hasLineVoltage(action.key(), context)) ? place(step) : Optional.empty();
  }

  /** A blower wheel that has lost its power still coasts behind the panel. */
  Optional<Span> openingBlower(int step) {
    return hasMotor("blower", FactTable.place(step(step))) ? opening(step) : Optional.empty();
  }

  /** Electric heaters stay hot behind the panel; the igniter of a furnace is no such heater. */
  Optional<Span> openingHeater(int step) {
    return heaters().anyMatch(place -> place.equals(FactTable.place(step(step)))) ? opening(step) : Optional.empty();
  }

  private Optional<Span> opening(int step) {
    return step(step).actions().stream().filter(action -> action.kind().begins(EquipmentCondition.OPEN)).findFirst()
        .map(action -> action.thing().span());
  }

  /** The proof that its power is off failed, and its panel may be open. */
  Optional<Span> stillLive(int step) {
    PathFacts.ProgramPoint point = at(step);
    boolean open = OpenUnit.panel(step(step), context)
        .filter(panel -> point.may(context.state().facts().of(Fact.OPEN, panel))).isPresent();
    return open && point.may(stillLiveFact(step)) ? place(step) : Optional.empty();
  }

  Optional<Witness> pathStillLive(int step) {
    return at(step).showHolding(stillLiveFact(step), "");
  }

  boolean isPowerOff(int step) {
    return at(step).isPowerOff();
  }

  private PathFacts.ProgramPoint at(int step) {
    PathFacts.ProgramPoint point = context.state().point();
    point.enter(step);
    return point;
  }

  private int stillLiveFact(int step) {
    return context.state().facts().of(Fact.STILL_LIVE, FactTable.place(step(step)));
  }

  /** How a step is reached so that a load comes on because of what it does. */
  Optional<JointStates.Arrival> turnsOn(int step, Predicate<String> load) {
    return step(step).actions().isEmpty() || context.tree().circuits().isEmpty() ? Optional.empty()
        : context.state().joint().at(step).stream()
            .filter(arrival -> isOn(load, arrival.after(step(step).actions().size()))
                && !isOn(load, arrival.after(0)))
            .findFirst();
  }

  /** The index of the action that turns it on. */
  int turningOn(int step, Predicate<String> load, JointStates.Arrival arrival) {
    return IntStream.range(0, step(step).actions().size()).filter(done -> isOn(load, arrival.after(done + 1)))
        .findFirst().orElseThrow();
  }

  private boolean isOn(Predicate<String> load, BitSet state) {
    return context.state().joint().settle(state).stream()
        .anyMatch(settled -> settled.loadsOn().stream().anyMatch(load));
  }

  /**
   * What is proved dead is not discharged yet. Inside a motor the capacitor is out of the way of the leads: the first
   * warning on each path is enough.
   */
  Optional<Span> provingBesideCapacitor(int step) {
    String place = FactTable.place(step(step));
    boolean charged = context.tree().hazards().capacitorPlaces().contains(place)
        || (context.tree().hazards().chargedPlaces().contains(place) && !isWarnedBefore(step));
    return charged ? step(step).actions().stream()
        .filter(action -> action.kind().begins(EquipmentCondition.PROVED_DEAD)).findFirst()
        .map(action -> action.thing().span())
        : Optional.empty();
  }

  /** A path on which the step's place is open and live. */
  Optional<Witness> path(int step) {
    return liveAt(step).flatMap(JointStates.Arrival::shown);
  }

  /** Worked out once for all cautions. */
  private Optional<JointStates.Arrival> liveAt(int step) {
    return live.computeIfAbsent(step, unit::liveAt);
  }

  /** A path to a step that proves dead beside a capacitor; one on which nothing has warned of it yet, if there is. */
  Optional<Witness> pathUnwarned(int step) {
    return context.state().show(isWarnedBefore(step) ? context.state().graph().shortestTo(step)
        : unwarned.pathTo(step, 1), step);
  }

  /** Whether every path to a step has warned of a stored charge. */
  private boolean isWarnedBefore(int step) {
    return unwarned.at(step) == 0;
  }

  private static DataflowSolver unwarned(PathFacts state) {
    FlowGraph graph = state.graph();
    long[] warned = new long[graph.size()];
    Arrays.setAll(warned, step -> LineVoltageUnsaid.warns(state.step(step), "stored charge") ? 1 : 0);
    return DataflowSolver.solve(graph, 1, new long[graph.size()], warned, null, null);
  }

  private Step step(int step) {
    return context.state().step(step);
  }

  private Optional<Span> place(int step) {
    return step(step).at().map(NameRef::span);
  }

  /** Whether the system has a motor with this word in its name at a place. */
  boolean hasMotor(String word, String place) {
    return context.tree().circuits().map(systems -> systems.once(MOTORS).getOrDefault(place, Set.of()))
        .filter(words -> words.contains(word)).isPresent();
  }

  /** The places of heaters that heat the air. */
  private Stream<String> heaters() {
    return context.tree().circuits().stream().flatMap(systems -> systems.once(HEATERS).stream());
  }

  private static Set<String> heaters(SystemVariants systems) {
    return systems.all().flatMap(system -> system.parts(Part.Load.class))
        .filter(load -> systems.base().vocabulary().isKind(load.key(), "heater") && !load.key().startsWith("igniter"))
        .flatMap(load -> load.branches().stream()).flatMap(limb -> Stream.of(limb.a().place(), limb.b().place()))
        .collect(Collectors.toSet());
  }

  /** By place, the words in the names of the motors that are there in any variant. */
  private static Map<String, Set<String>> motors(SystemVariants systems) {
    Map<String, Set<String>> motors = new HashMap<>();
    systems.all().flatMap(system -> system.parts(Part.Load.class))
        .filter(load -> systems.base().vocabulary().isKind(load.key(), "motor"))
        .forEach(load -> load.branches().forEach(limb -> Stream.of(limb.a(), limb.b())
            .forEach(end -> motors.computeIfAbsent(end.place(), any -> new HashSet<>())
                .addAll(List.of(load.key().split(" "))))));
    return motors;
  }
}
