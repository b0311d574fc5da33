package rungbook.web.views;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import rungbook.proof.accounting.ReportNumbers;

/**
 * The scale of a picture of readings, from zero on.
 *
 * @param high the reading at its right end; anything higher is drawn there
 * @param left where zero is, in the picture's units
 */
record ReadingAxis(double high, double left, double width) {

  private static final int FEWEST_STEPS = 4;

  double x(double reading) {
    return left + width * Math.max(0, Math.min(1, reading / high));
  }

  /** Round numbers a round step apart: four to ten steps. */
  List<BigDecimal> ticks() {
    BigDecimal step = step();
    int count = (int) Math.floor(high / step.doubleValue() + 1e-9);
    return IntStream.rangeClosed(0, count).mapToObj(i -> step.multiply(BigDecimal.valueOf(i))).toList();
  }

  private BigDecimal step() {
    int exponent = (int) Math.floor(Math.log10(high));
    for (int leading : new int[] {2, 1}) {
      BigDecimal step = BigDecimal.valueOf(leading).scaleByPowerOfTen(exponent);
      if (high / step.doubleValue() >= FEWEST_STEPS) {
        return step;
      }
    }
    BigDecimal half = BigDecimal.valueOf(5).scaleByPowerOfTen(exponent - 1);
    return high / half.doubleValue() >= FEWEST_STEPS ? half : BigDecimal.valueOf(2).scaleByPowerOfTen(exponent - 1);
  }

  static String label(BigDecimal tick) {
    return ReportNumbers.number(tick);
  }
}
