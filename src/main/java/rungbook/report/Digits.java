package rungbook.report;

/** Formats integers without the JDK's formatter, which would load all locales. */
public final class Digits {

  private Digits() {}

  /**
   * With a comma after every three digits.
   *
   * @param number not negative
   */
  public static String grouped(long number) {
    var digits = new StringBuilder().append(number);
    for (int at = digits.length() - 3; at > 0; at -= 3) {
      digits.insert(at, ',');
    }
    return digits.toString();
  }

  /**
   * Right-aligned.
   *
   * @param width columns at least
   */
  static String right(int number, int width) {
    String digits = Integer.toString(number);
    return " ".repeat(Math.max(0, width - digits.length())) + digits;
  }
}
