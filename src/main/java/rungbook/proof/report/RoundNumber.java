package rungbook.proof.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Numbers that people would write, with no more digits than the meter shows. */
final class RoundNumber {

  private static final double LESS_THAN_A_DIGIT = 1e-6;

  private RoundNumber() {}

  /**
   * The roundest number well inside an interval, nearest to its middle; if there is none, the first that the display
   * can show above the lower end. Empty if the display shows none.
   *
   * @param low excluded
   * @param high included
   */
  static Optional<BigDecimal> within(double low, double high, BigDecimal digit) {
    if (!(low < high) || Double.isInfinite(high)) {
      return Optional.empty();
    }
    double middle = (low + high) / 2;
    double margin = (high - low) / 4;
    for (int exponent = (int) Math.ceil(Math.log10(Math.max(1e-9, high))) + 1; exponent > -12; exponent--) {
      for (int leading : new int[] {5, 2, 1}) {
        BigDecimal step = BigDecimal.valueOf(leading).scaleByPowerOfTen(exponent);
        BigDecimal near = BigDecimal.valueOf(middle).divide(step, 0, RoundingMode.HALF_UP).multiply(step);
        if (isShown(step, digit) && near.signum() > 0 && Math.abs(near.doubleValue() - middle) <= margin) {
          return Optional.of(near);
        }
      }
    }
    double most = high + LESS_THAN_A_DIGIT * digit.doubleValue();
    return firstAbove(low, digit).filter(first -> first.doubleValue() <= most);
  }

  private static boolean isShown(BigDecimal step, BigDecimal digit) {
    return step.remainder(digit).signum() == 0;
  }

  private static Optional<BigDecimal> firstAbove(double low, BigDecimal digit) {
    double count = Math.floor(low / digit.doubleValue() + LESS_THAN_A_DIGIT) + 1;
    return Optional.of(digit.multiply(BigDecimal.valueOf((long) count)));
  }
}
