package rungbook.text;

import java.time.LocalDateTime;

/** The time of the files in a zip whose bytes depend on its content alone. */
public final class ZipTime {

  /**
   * Two seconds after the first that the format can hold: at that first one Java adds a field with the time in UTC,
   * which depends on the machine's time zone.
   */
  public static final LocalDateTime NONE = LocalDateTime.of(1980, 1, 1, 0, 0, 2);

  private ZipTime() {}
}
