package rungbook.system.hazard;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.system.ControlSystem;
import rungbook.system.SystemVariants;

/**
 * What a system's wiring says about where it can hurt. All names are keys.
 *
 * @param conductors by place: the line-voltage conductors that have to be proved dead before hands go in there, each as
 * the points at which leads can reach it
 * @param neutrals by place: the points of the grounded conductor of a supply; an open one can be live
 * @param feeders by place: the power switches that cut line voltage off there
 * @param charged parts, assemblies and points that a capacitor is in or is joined to
 * @param capacitorPlaces where a capacitor of the circuit is
 * @param chargedPlaces the same, and where a motor with one of its own is
 */
public record ElectricalHazards(Map<String, List<Set<String>>> conductors, Map<String, Set<String>> neutrals,
    Map<String, Set<String>> feeders, Set<String> charged,
    Set<String> capacitorPlaces, Set<String> chargedPlaces) {

  /** Nothing is known, such as of a tree without a system. */
  public static final ElectricalHazards NONE = new ElectricalHazards(Map.of(), Map.of(), Map.of(), Set.of(),
      Set.of(), Set.of());

  private static final Function<SystemVariants, ElectricalHazards> IN_ANY = ElectricalHazards::inAny;

  public ElectricalHazards {
    conductors = Map.copyOf(conductors);
    neutrals = Map.copyOf(neutrals);
    feeders = Map.copyOf(feeders);
    charged = Set.copyOf(charged);
    capacitorPlaces = Set.copyOf(capacitorPlaces);
    chargedPlaces = Set.copyOf(chargedPlaces);
  }

  /** What is so in any variant. */
  public static ElectricalHazards of(SystemVariants systems) {
    return systems.once(IN_ANY);
  }

  private static ElectricalHazards inAny(SystemVariants systems) {
    return systems.all().map(ElectricalHazards::of).reduce(NONE, ElectricalHazards::or);
  }

  static ElectricalHazards of(ControlSystem system) {
    Metal metal = Metal.of(system, SuppliedConductors::isMetal);
    SuppliedConductors supplied = SuppliedConductors.of(system, metal);
    return new ElectricalHazards(supplied.switchedOff(), Neutrals.of(system, metal), supplied.feeders(),
        ChargedThings.of(system, metal), ChargedThings.capacitorPlaces(system, metal),
        ChargedThings.places(system, metal));
  }

  private ElectricalHazards or(ElectricalHazards other) {
    var all = new HashMap<String, List<Set<String>>>();
    Stream.concat(conductors.keySet().stream(), other.conductors.keySet().stream()).distinct()
        .forEach(place -> all.put(place, narrowest(conductorsAt(place), other.conductorsAt(place))));
    var switches = new HashMap<>(feeders);
    other.feeders.forEach((place, more) -> switches.merge(place, more, ElectricalHazards::union));
    var grounded = new HashMap<>(neutrals);
    other.neutrals.forEach((place, more) -> grounded.merge(place, more, ElectricalHazards::union));
    return new ElectricalHazards(all, grounded, switches, union(charged, other.charged),
        union(capacitorPlaces, other.capacitorPlaces), union(chargedPlaces, other.chargedPlaces));
  }

  /** A conductor that is part of another in one of the variants: proving the part proves the whole. */
  private static List<Set<String>> narrowest(List<Set<String>> first, List<Set<String>> second) {
    List<Set<String>> all = Stream.concat(first.stream(), second.stream()).distinct().toList();
    return all.stream().filter(one -> all.stream().noneMatch(other -> !other.equals(one) && one.containsAll(other)))
        .toList();
  }

  private static Set<String> union(Set<String> first, Set<String> second) {
    return Stream.concat(first.stream(), second.stream()).collect(Collectors.toSet());
  }

  /** The line-voltage conductors to be proved dead at a place. */
  public List<Set<String>> conductorsAt(String place) {
    return conductors.getOrDefault(place, List.of());
  }

  /** The points of a neutral at a place. */
  public Set<String> neutralAt(String place) {
    return neutrals.getOrDefault(place, Set.of());
  }

  /** Whether a power switch cuts line voltage off at a place; every one may, if the system has no supply. */
  public boolean feeds(String source, String place) {
    return conductors.isEmpty() || feeders.getOrDefault(place, Set.of()).contains(source);
  }
}
