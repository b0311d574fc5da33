package rungbook.rules.cautions;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.JointStates;
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

  private static final Function<SystemVariants, Map<String, Set<String>>> MOTORS = HazardousPlaces::motors;
  private static final Function<SystemVariants, Set<String>> CAPACITORS = HazardousPlaces::capacitors;

  private final RuleContext context;
  private final OpenUnit unit;
  private final Map<Integer, Optional<JointStates.Arrival>> live = new HashMap<>();

  HazardousPlaces(RuleContext context) {
    this.context = context;
    this.unit = new OpenUnit(context);
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

  /** What is proved dead is not discharged yet. */
  Optional<Span> provingBesideCapacitor(int step) {
    return isBesideCapacitor(FactTable.place(step(step))) ? step(step).actions().stream()
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

  private Step step(int step) {
    return context.state().step(step);
  }

  private Optional<Span> place(int step) {
    return step(step).at().map(NameRef::span);
  }

  private boolean hasMotor(String word, String place) {
    return context.tree().circuits().map(systems -> systems.once(MOTORS).getOrDefault(place, Set.of()))
        .filter(words -> words.contains(word)).isPresent();
  }

  private boolean isBesideCapacitor(String place) {
    return context.tree().circuits().filter(systems -> systems.once(CAPACITORS).contains(place)).isPresent();
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

  private static Set<String> capacitors(SystemVariants systems) {
    return systems.all().flatMap(system -> system.parts(Part.Capacitor.class)).flatMap(part -> part.branches().stream())
        .flatMap(limb -> Stream.of(limb.a().place(), limb.b().place())).collect(Collectors.toSet());
  }
}
