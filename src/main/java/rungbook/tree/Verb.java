package rungbook.tree;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a task or a repair does. */
public enum Verb {
  SET, OPEN, CLOSE, BYPASS, ISOLATE, PROVE_DEAD, DISCHARGE, DISCONNECT, RECONNECT, REPLACE, RESTORE, TAG_OUT, KNOWN_SOURCE;

  /** As trees write it: {@code prove dead}. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  public static Optional<Verb> named(String written) {
    return Arrays.stream(values()).filter(verb -> verb.words().equalsIgnoreCase(written)).findFirst();
  }

  /** Whether it changes what a meter would read, so that earlier readings no longer hold. */
  public boolean changesCircuit() {
    return switch (this) {
      case SET, BYPASS, ISOLATE, DISCONNECT, RECONNECT, REPLACE, RESTORE, DISCHARGE -> true;
      case OPEN, CLOSE, PROVE_DEAD, TAG_OUT, KNOWN_SOURCE -> false;
    };
  }
}
