package rungbook.markdown;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The words after a fence that have a meaning here. */
public final class Kinds {

  public static final Set<String> OF_STEPS = Set.of("check", "task", "finding", "end", "take", "exit");
  public static final Set<String> OF_SYSTEMS = Set.of("locations", "points", "controls", "supply", "parts", "states",
      "sights", "quantities", "boards", "cables", "strips", "faults", "assemblies", "variants");
  public static final Set<String> OF_METERS = Set.of("meter");

  /** Begins the words of a block that changes a system for one of its variants: {@code variant no float switch}. */
  public static final String OF_VARIANT = "variant ";

  private static final Set<String> ALL = Stream.of(OF_STEPS, OF_SYSTEMS, OF_METERS).flatMap(Set::stream)
      .collect(Collectors.toUnmodifiableSet());

  private Kinds() {}

  static boolean isKnown(String word) {
    return ALL.contains(word) || word.startsWith(OF_VARIANT);
  }
}
