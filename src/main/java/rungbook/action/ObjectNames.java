package rungbook.action;

import java.util.Optional;
import rungbook.system.Vocabulary.Point;
import rungbook.system.Vocabulary;

/** What a name stands for when something is done to it. All names are lookup keys. */
public final class ObjectNames {

  private ObjectNames() {}

  /** Whether a name is a part of a kind, by the system's word for it, else by the name itself. */
  public static boolean isPart(Optional<Vocabulary> system, String key, String kind) {
    boolean known = system.isPresent() && system.get().parts().containsKey(key);
    return known ? system.get().isKind(key, kind) : key.contains(kind);
  }

  /** The meter point that comes off when a name is disconnected; empty if the name is a part or unknown. */
  public static Optional<Point> terminal(Vocabulary system, String key) {
    return system.parts().containsKey(key) ? Optional.empty() : Optional.ofNullable(system.points().get(key));
  }

  /**
   * What comes off: a part by its name, a terminal by its name and its place, since terminals at several places share a
   * name.
   *
   * @param place where the work is done; empty if the step does not say. A terminal at one place only needs none
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
