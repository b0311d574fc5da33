package rungbook.system.hazard;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.Terminal;

/**
 * What holds a capacitor's charge: the capacitor itself, the motors joined to it or with one of their own, and the
 * terminals of all of them.
 */
final class ChargedThings {

  private final ControlSystem system;
  private final Metal metal;
  private final Set<Terminal> charged = new HashSet<>();

  private ChargedThings(ControlSystem system, Metal metal) {
    this.system = system;
    this.metal = metal;
    capacitors().forEach(part -> terminals(part).map(metal::root).forEach(charged::add));
  }

  /**
   * The keys of parts, limbs, assemblies and points.
   *
   * @param metal the conductors of the system
   */
  static Set<String> of(ControlSystem system, Metal metal) {
    return new ChargedThings(system, metal).keys();
  }

  private Set<String> keys() {
    Set<String> keys = new HashSet<>();
    parts().forEach(part -> {
      keys.add(part.key());
      terminals(part).filter(terminal -> !terminal.place().isEmpty()).map(Terminal::point).forEach(keys::add);
    });
    for (Map.Entry<String, Set<String>> assembly : system.vocabulary().assemblies().entrySet()) {
      if (assembly.getValue().stream().anyMatch(keys::contains)) {
        keys.add(assembly.getKey());
      }
    }
    return keys;
  }

  /** The keys of the places where a capacitor of the circuit is. */
  static Set<String> capacitorPlaces(ControlSystem system, Metal metal) {
    return places(new ChargedThings(system, metal).capacitors());
  }

  /** The same, and where a motor with one of its own is. */
  static Set<String> places(ControlSystem system, Metal metal) {
    var things = new ChargedThings(system, metal);
    return places(Stream.concat(things.capacitors(), things.ownCapacitor()));
  }

  private static Set<String> places(Stream<Part> parts) {
    return parts.flatMap(ChargedThings::terminals).map(Terminal::place).filter(place -> !place.isEmpty())
        .collect(Collectors.toSet());
  }

  private Stream<Part> parts() {
    return Stream.of(capacitors(), motors(), ownCapacitor()).flatMap(parts -> parts).distinct();
  }

  private Stream<Part> ownCapacitor() {
    return system.parts().stream().filter(part -> system.vocabulary().holdsCharge(part.key()))
        .filter(part -> !(part instanceof Part.Capacitor));
  }

  private Stream<Part> capacitors() {
    return system.parts(Part.Capacitor.class).map(part -> part);
  }

  /** The motors of which one end is joined to a capacitor. */
  private Stream<Part> motors() {
    return system.parts().stream().filter(part -> system.vocabulary().isKind(part.key(), "motor"))
        .filter(part -> terminals(part).map(metal::root).anyMatch(charged::contains));
  }

  private static Stream<Terminal> terminals(Part part) {
    return part.branches().stream().flatMap(branch -> Stream.of(branch.a(), branch.b()));
  }
}
