package rungbook.markdown;

import java.util.Set;

/** The words after a fence that make a block more than an example. */
public final class Kinds {

  public static final Set<String> OF_STEPS = Set.of("check", "task", "finding", "take", "exit");
  public static final Set<String> OF_SYSTEMS =
      Set.of("locations", "points", "controls", "supply", "parts", "states", "sights", "boards", "cables", "faults");
  public static final Set<String> OF_METERS = Set.of("meter");

  private Kinds() {}

  static boolean isKnown(String word) {
    return OF_STEPS.contains(word) || OF_SYSTEMS.contains(word) || OF_METERS.contains(word);
  }
}
