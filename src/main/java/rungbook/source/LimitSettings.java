package rungbook.source;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Limits as settings: the system property {@code rungbook.limit.lines}, or {@code RUNGBOOK_LIMIT_LINES} in the
 * environment.
 *
 * @param settings by name; empty for what is not set
 */
public record LimitSettings(Function<String, Optional<String>> settings) {

  private static final String PREFIX = "rungbook.limit.";

  /** The settings that this run of the program was started with. */
  public static LimitSettings ofThisRun() {
    return new LimitSettings(LimitSettings::setting);
  }

  /** What is no number above zero counts as not set. */
  public int number(String name, int usual) {
    return settings.apply(PREFIX + name).filter(written -> written.matches("[1-9][0-9]{0,8}")).map(Integer::valueOf)
        .orElse(usual);
  }

  private static Optional<String> setting(String name) {
    return Optional.ofNullable(System.getProperty(name))
        .or(() -> Optional.ofNullable(System.getenv(name.replace('.', '_').toUpperCase(Locale.ROOT))));
  }
}
