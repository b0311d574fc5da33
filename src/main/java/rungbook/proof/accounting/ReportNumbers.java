package rungbook.proof.accounting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import rungbook.circuit.Reading;
import rungbook.system.Quantity;

/** Numbers in the words of a report. */
public final class ReportNumbers {

  private ReportNumbers() {}

  /** A reading as a perfect meter would show it: {@code 23.4 V}, {@code OL}. */
  public static String reading(double reading, BigDecimal digit, Quantity quantity) {
    if (reading == Reading.OVERLOAD) {
      return "OL";
    }
    if (reading == Reading.UNSTEADY || reading == Reading.LIVE) {
      return "nothing steady";
    }
    return count(Math.round(ReadingSplit.shownAbout(reading) / digit.doubleValue()), digit) + " " + quantity.unit();
  }

  /** So many of the display's last digit, as a number. */
  static String count(long count, BigDecimal digit) {
    return number(digit.multiply(BigDecimal.valueOf(count)));
  }

  /** A number as people write it. */
  public static String number(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped).toPlainString();
  }

  /** A share in percent: {@code 2.4 %}; what is there is never shown as nothing. */
  public static String percent(double share) {
    double percent = Share.isAll(share) ? 100 : share < Share.ROUNDING ? 0 : 100 * share;
    if (percent > 0 && percent < 0.1) {
      return "under 0.1 %";
    }
    if (percent < 100 && percent > 99.9) {
      return "over 99.9 %";
    }
    return number(BigDecimal.valueOf(percent).setScale(percent < 10 ? 1 : 0, RoundingMode.HALF_UP)) + " %";
  }
}
