package rungbook.text;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/** Formats dates and times in US style. */
public final class Day {

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.US);
  private static final DateTimeFormatter DAY_AND_TIME = DateTimeFormatter.ofPattern("MMMM d, yyyy, h:mm a", Locale.US);

  private Day() {}

  /** {@code March 1, 2026}. */
  public static String written(LocalDate day) {
    return DAY.format(day);
  }

  /**
   * {@code March 1, 2026, 4:05 PM}.
   *
   * @param time in the zone to display; a value with no time zone is formatted as it is
   */
  public static String andTime(TemporalAccessor time) {
    return DAY_AND_TIME.format(time);
  }
}
