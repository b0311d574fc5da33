package rungbook.system.hazard;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.Terminal;

/** The grounded conductors of a system's supplies, as far as metal goes without passing ground. */
final class Neutrals {

  private Neutrals() {}

  /**
   * By place, the keys of the points of a neutral there.
   *
   * @param bonded the conductors of the system
   */
  static Map<String, Set<String>> of(ControlSystem system, Metal bonded) {
    Metal apart = Metal.of(system, part -> SuppliedConductors.isMetal(part) && !endsAtGround(part));
    Terminal ground = bonded.root(new Terminal(Terminal.GROUND, ""));
    Set<Terminal> neutrals = system.parts(Part.Supply.class).flatMap(Neutrals::ends)
        .filter(end -> !end.isGround() && bonded.root(end).equals(ground)).map(apart::root)
        .collect(Collectors.toSet());
    Map<String, Set<String>> found = new HashMap<>();
    system.vocabulary().points().forEach((key, point) -> point.locations().stream()
        .filter(place -> neutrals.contains(apart.root(new Terminal(key, place))))
        .forEach(place -> found.computeIfAbsent(place, any -> new LinkedHashSet<>()).add(key)));
    return found;
  }

  private static boolean endsAtGround(Part part) {
    return !(part instanceof Part.Cable) && ends(part).anyMatch(Terminal::isGround);
  }

  private static Stream<Terminal> ends(Part part) {
    return part.branches().stream().flatMap(branch -> Stream.of(branch.a(), branch.b()));
  }
}
