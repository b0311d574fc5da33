package rungbook.system.hazard;

import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.system.ControlSystem;

/**
 * What a system's wiring says about where it can hurt. All names are keys.
 *
 * @param conductors by place: the line-voltage conductors that have to be proved dead before hands go in there, each as
 * the points at which leads can reach it
 * @param feeders by place: the power switches that cut line voltage off there
 * @param charged parts, assemblies and points that a capacitor is in or is joined to
 */
public record ElectricalHazards(Map<String, List<Set<String>>> conductors, Map<String, Set<String>> feeders,
    Set<String> charged) {

  /** Nothing is known, such as of a tree without a system. */
  public static final ElectricalHazards NONE = new ElectricalHazards(Map.of(), Map.of(), Set.of());

  public ElectricalHazards {
    conductors = Map.copyOf(conductors);
    feeders = Map.copyOf(feeders);
    charged = Set.copyOf(charged);
  }

  public static ElectricalHazards of(ControlSystem system) {
    SuppliedConductors supplied = SuppliedConductors.of(system);
    return new ElectricalHazards(supplied.switchedOff(), supplied.feeders(), ChargedThings.of(system));
  }

  /** The line-voltage conductors to be proved dead at a place. */
  public List<Set<String>> conductorsAt(String place) {
    return conductors.getOrDefault(place, List.of());
  }

  /** Whether a power switch cuts line voltage off at a place; every one may, if the system has no supply. */
  public boolean feeds(String source, String place) {
    return conductors.isEmpty() || feeders.getOrDefault(place, Set.of()).contains(source);
  }
}
