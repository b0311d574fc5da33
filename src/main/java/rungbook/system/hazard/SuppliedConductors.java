package rungbook.system.hazard;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.Terminal;
import rungbook.system.Vocabulary;
import rungbook.system.Vocabulary.Point;
import rungbook.system.Vocabulary.Role;

/**
 * The line-voltage conductors of a system that a supply reaches through metal, switches, interlocks, fuses, breakers
 * and the poles of a contactor, but through no load and no single relay contact. A conductor on the line side of a
 * power switch is left out: it stays live.
 */
final class SuppliedConductors {

  private final ControlSystem system;
  private final Metal metal;
  private final Set<String> contactors;
  private final List<Passage> passages;
  private final Set<Terminal> supplied;
  private final Map<String, Set<Terminal>> suppliedWithout = new LinkedHashMap<>();

  /** A part that passes voltage on from one conductor to another. */
  private record Passage(String part, Terminal a, Terminal b) {}

  private SuppliedConductors(ControlSystem system, Metal metal) {
    this.system = system;
    this.metal = metal;
    this.contactors = contactors();
    this.passages = system.parts().stream().filter(this::passes).flatMap(part -> part.branches().stream()
        .map(limb -> new Passage(part.key(), metal.root(limb.a()), metal.root(limb.b())))).toList();
    this.supplied = reached("");
    isolators().forEach(isolator -> suppliedWithout.put(isolator, reached(isolator)));
  }

  /** @param metal the conductors of the system */
  static SuppliedConductors of(ControlSystem system, Metal metal) {
    return new SuppliedConductors(system, metal);
  }

  /**
   * By place, without what is on the line side of a power switch; each as the keys of its points there. Empty if the
   * system has no supply.
   */
  Map<String, List<Set<String>>> switchedOff() {
    Set<Terminal> off = new HashSet<>(supplied);
    suppliedWithout.forEach((isolator, without) -> system.part(isolator)
        .ifPresent(part -> ends(part).filter(without::contains).forEach(off::remove)));
    return byPlace(off);
  }

  /** By place, the power switches without which some conductor there is dead. */
  Map<String, Set<String>> feeders() {
    Map<String, Set<String>> feeders = new HashMap<>();
    suppliedWithout.forEach((isolator, without) -> {
      Set<Terminal> cut = new HashSet<>(supplied);
      cut.removeAll(without);
      byPlace(cut).keySet().forEach(place -> feeders.computeIfAbsent(place, any -> new HashSet<>()).add(isolator));
    });
    return feeders;
  }

  private List<String> isolators() {
    return system.vocabulary().controls().entrySet().stream()
        .filter(control -> control.getValue().role() == Role.ISOLATOR).map(Map.Entry::getKey).toList();
  }

  /** Those of some conductors that have a point at line voltage, by the places where leads can reach them. */
  private Map<String, List<Set<String>>> byPlace(Set<Terminal> conductors) {
    Map<String, Map<Terminal, Set<String>>> found = new LinkedHashMap<>();
    Map<String, Set<Terminal>> line = new HashMap<>();
    system.vocabulary().points().forEach((key, point) -> point.locations().forEach(place -> {
      Terminal root = metal.root(new Terminal(key, place));
      if (conductors.contains(root)) {
        found.computeIfAbsent(place, any -> new LinkedHashMap<>())
            .computeIfAbsent(root, any -> new LinkedHashSet<>()).add(key);
        if (isLineVoltage(point)) {
          line.computeIfAbsent(place, any -> new HashSet<>()).add(root);
        }
      }
    }));
    Map<String, List<Set<String>>> listed = new HashMap<>();
    line.forEach((place, roots) -> listed.put(place, found.getOrDefault(place, Map.of()).entrySet().stream()
        .filter(conductor -> roots.contains(conductor.getKey())).map(Map.Entry::getValue).toList()));
    return listed;
  }

  private static boolean isLineVoltage(Point point) {
    return point.volts().orElse(0) >= Vocabulary.LINE_VOLTS;
  }

  static boolean isMetal(Part part) {
    return part instanceof Part.Wire || part instanceof Part.Joint || part instanceof Part.Cable;
  }

  /** The coils that move two contacts or more. */
  private Set<String> contactors() {
    Map<String, Integer> poles = new HashMap<>();
    system.parts(Part.Switch.class).forEach(contact -> {
      if (contact.closedWhen() instanceof Condition.On on) {
        poles.merge(on.name(), contact.branches().size(), Integer::sum);
      }
    });
    poles.values().removeIf(count -> count < 2);
    return poles.keySet();
  }

  /** The conductors, by root, that a supply reaches while one switch is open. */
  private Set<Terminal> reached(String open) {
    Set<Terminal> reached = new HashSet<>();
    system.parts(Part.Supply.class).flatMap(this::ends).forEach(reached::add);
    List<Passage> closed = passages.stream().filter(passage -> !passage.part().equals(open)).toList();
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Passage passage : closed) {
        grows |= reached.contains(passage.a()) ? reached.add(passage.b())
            : reached.contains(passage.b()) && reached.add(passage.a());
      }
    }
    return reached;
  }

  private Stream<Terminal> ends(Part part) {
    return part.branches().stream().flatMap(branch -> Stream.of(branch.a(), branch.b()))
        .map(metal::root);
  }

  private boolean passes(Part part) {
    boolean byHand = system.vocabulary().controls().containsKey(part.key());
    return part instanceof Part.Fuse || (part instanceof Part.Switch contact
        && (byHand || (contact.closedWhen() instanceof Condition.On on && contactors.contains(on.name()))));
  }
}
