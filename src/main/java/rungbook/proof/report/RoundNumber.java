package rungbook.proof.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers that people would write. */
final class RoundNumber {

  private RoundNumber() {}

  /** The roundest number well inside an interval, nearest to its middle. */
  static BigDecimal within(double low, double high) {
    double middle = (low + high) / 2;
    double margin = (high - low) / 4;
    for (int exponent = (int) Math.ceil(Math.log10(Math.max(1e-9, high))) + 1; exponent > -12; exponent--) {
      for (int digit : new int[] {5, 2, 1}) {
        BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(exponent);
        BigDecimal near = BigDecimal.valueOf(middle).divide(step, 0, RoundingMode.HALF_UP).multiply(step);
        if (near.signum() > 0 && Math.abs(near.doubleValue() - middle) <= margin) {
          return near;
        }
      }
    }
    return BigDecimal.valueOf(middle);
  }
}
