package rungbook.tree;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A kind of work that not everybody may do. */
public enum WorkKind {
  LIVE_WORK("live work over 50 V"), REFRIGERANT("refrigerant"), GAS_VALVES("gas valves"),
  BRANCH_CIRCUITS("branch circuits");

  private final String words;

  WorkKind(String words) {
    this.words = words;
  }

  /** As a qualification writes it: {@code gas valves}. */
  public String words() {
    return words;
  }

  public static Optional<WorkKind> named(String written) {
    String lower = written.toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(kind -> kind.words.toLowerCase(Locale.ROOT).equals(lower)).findFirst();
  }

  public static List<String> allWords() {
    return Arrays.stream(values()).map(WorkKind::words).toList();
  }
}
