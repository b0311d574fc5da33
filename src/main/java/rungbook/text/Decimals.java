package rungbook.text;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers with decimals, without the JDK's formatter, which would load all locales. */
public final class Decimals {

  private Decimals() {}

  /**
   * Rounded half up, as the JDK's formatter does.
   *
   * @param number finite
   */
  public static String rounded(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** The same without zeros at its end: {@code 0.5}, {@code 40}. */
  public static String shortest(double number, int decimals) {
    return new BigDecimal(rounded(number, decimals)).stripTrailingZeros().toPlainString();
  }
}
