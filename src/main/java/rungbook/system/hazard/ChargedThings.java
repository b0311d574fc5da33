package rungbook.system.hazard;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.Terminal;

/** What holds a capacitor's charge: the capacitor itself, the motors joined to it, and the terminals of both. */
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
    Stream.concat(capacitors(), motors()).forEach(part -> {
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
