package rungbook.project;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;

/** That a class knows only its own room and those before it. */
final class OneWay extends ArchCondition<JavaClass> {

  /** In the order in which a text becomes a pack; {@code map} and {@code report} hang on where they stand. */
  private static final List<String> ROOMS = List.of(
      "text", "source", "markdown", "system", "ladder", "action", "tree", "map", "rules", "circuit", "proof", "pack",
      "library",
      "report", "store", "cli", "web");

  OneWay() {
    super("know only their own room and those before it: " + String.join(", ", ROOMS));
  }

  @Override
  public void check(JavaClass from, ConditionEvents events) {
    for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
      if (dependency.getTargetClass().getPackageName().startsWith("rungbook.")) {
        boolean allowed = rank(dependency.getTargetClass()) <= rank(from);
        events.add(new SimpleConditionEvent(from, allowed, dependency.getDescription()));
      }
    }
  }

  /** @throws IllegalStateException for a room that nobody has given its place */
  private static int rank(JavaClass one) {
    String room = one.getPackageName().split("\\.")[1];
    if (!ROOMS.contains(room)) {
      throw new IllegalStateException("the room " + room + " has no place in the order");
    }
    return ROOMS.indexOf(room);
  }
}
