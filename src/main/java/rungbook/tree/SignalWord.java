package rungbook.tree;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A caution's level: the signal words of ANSI Z535, the worst first. */
public enum SignalWord {
  DANGER, WARNING, CAUTION, NOTICE;

  /** The level as a text writes it; empty for any other word. */
  public static Optional<SignalWord> of(String word) {
    return Arrays.stream(values()).filter(level -> level.word().equals(word)).findFirst();
  }

  /** What a text may write. */
  public static List<String> words() {
    return Arrays.stream(values()).map(SignalWord::word).toList();
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
