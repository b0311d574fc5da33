package rungbook.tree;

import java.util.Locale;

/**
 * A time that somebody keeps with a clock: how long a task waits, or for how long what a check reads is there.
 *
 * @param written the time as the author wrote it: {@code 5 min}
 */
public record StepTimer(Kind kind, int seconds, String written) {

  /** What runs. */
  public enum Kind {
    /** Of a task: nothing goes on before it is over. */
    WAIT,
    /** Of a check: it begins without asking, and after it there is nothing to read. */
    LASTS;

    private final String key = name().toLowerCase(Locale.ROOT);

    /** The key of the line that says so. */
    public String key() {
      return key;
    }
  }
}
