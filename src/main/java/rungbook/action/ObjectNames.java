package rungbook.action;

import java.util.Optional;
import java.util.Set;
import rungbook.system.Vocabulary.Point;
import rungbook.system.Vocabulary;

/** Resolves the object of an action. All names are lookup keys. */
public final class ObjectNames {

  private ObjectNames() {}

  /** Whether a name is a part of a kind: by the system if it lists the part, else by the name itself. */
  public static boolean isPart(Optional<Vocabulary> system, String key, String kind) {
    boolean known = system.isPresent() && system.get().parts().containsKey(key);
    return known ? system.get().isKind(key, kind) : key.contains(kind);
  }

  /** Whether a name holds the charge of a capacitor: by the system if it lists the part, else by the name itself. */
  public static boolean holdsCharge(Optional<Vocabulary> system, String key) {
    boolean known = system.isPresent() && system.get().parts().containsKey(key);
    return known ? system.get().holdsCharge(key) : key.contains("capacitor");
  }

  /** The keys of the switches that are reset with a thing; without a system, any thing may be one. */
  static Set<String> resetWith(Optional<Vocabulary> system, String key) {
    return system.map(known -> known.resetWith(key)).orElse(Set.of(key));
  }

  /** The meter point that comes off when a name is disconnected; empty if the name is a part or unknown. */
  public static Optional<Point> terminal(Vocabulary system, String key) {
    return system.parts().containsKey(key) ? Optional.empty() : Optional.ofNullable(system.points().get(key));
  }

  /**
   * The key of what comes off: a part's name, or a terminal's name and place, since terminals at several places share a
   * name.
   *
   * @param place where the work is done; {@code ""} if the step does not say. Not needed for a terminal at one place
   * only
   */
  static String loose(Optional<Vocabulary> system, String key, String place) {
    Optional<Point> terminal = system.flatMap(known -> terminal(known, key));
    if (terminal.isEmpty()) {
      return key;
    }
    boolean onePlace = terminal.get().locations().size() == 1;
    String at = onePlace ? terminal.get().locations().iterator().next() : place;
    return at.isEmpty() ? key : key + " at " + at;
  }
}
