package rungbook.tree;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a task or a repair does. */
public enum Verb {
  SET, OPEN, CLOSE, BYPASS, ISOLATE, PROVE_DEAD, DISCHARGE, DISCONNECT, RECONNECT, REPLACE, RESTORE, TAG_OUT, KNOWN_SOURCE;

  private static final Map<String, Verb> BY_WORDS =
      Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Verb::words, verb -> verb));

  private final String words = name().toLowerCase(Locale.ROOT).replace('_', ' ');

  /** As trees write it: {@code prove dead}. */
  public String words() {
    return words;
  }

  public static Optional<Verb> named(String written) {
    return Optional.ofNullable(BY_WORDS.get(written.toLowerCase(Locale.ROOT)));
  }

  /** Whether hands go on a wire or a part, so that it has to be dead. */
  public boolean touches() {
    return this == DISCONNECT || this == RECONNECT || this == REPLACE;
  }

  /** Whether it changes what a meter would read, so that earlier readings no longer hold. */
  public boolean changesCircuit() {
    return switch (this) {
      case SET, BYPASS, ISOLATE, DISCONNECT, RECONNECT, REPLACE, RESTORE, DISCHARGE -> true;
      case OPEN, CLOSE, PROVE_DEAD, TAG_OUT, KNOWN_SOURCE -> false;
    };
  }
}
