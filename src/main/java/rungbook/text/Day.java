package rungbook.text;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/** Days and times as people in the United States write them. */
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
   * @param time with its zone, if its clock time is to be another one's
   */
  public static String andTime(TemporalAccessor time) {
    return DAY_AND_TIME.format(time);
  }
}
