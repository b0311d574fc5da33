package rungbook.proof.accounting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import rungbook.proof.accounting.Risks.Interval;
import rungbook.system.Quantity;
import rungbook.tree.Meter;

/** Risks and decision rules held to published examples. */
class RisksTest {

  private static final double INFINITY = Double.POSITIVE_INFINITY;

  private static MeterError normal(double u) {
    return (value, limit) -> cumulative((limit - value) / u);
  }

  /** The normal distribution, by Simpson's rule from −12. */
  private static double cumulative(double x) {
    if (x <= -11 || x >= 11) {
      return x < 0 ? 0 : 1;
    }
    int steps = 1000;
    double from = -12;
    double h = (x - from) / steps;
    double sum = density(from) + density(x);
    for (int i = 1; i < steps; i++) {
      sum += (i % 2 == 0 ? 2 : 4) * density(from + i * h);
    }
    return sum * h / 3;
  }

  private static double density(double x) {
    return Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
  }

  /** JCGM 106:2012, resistors of 1500 Ω (inputs seen; it prints about 0.01 and 0.07; more digits computed). */
  @Test
  void resistorsOfTheStandardHaveItsRisks() {
    Interval tolerance = new Interval(1499.8, 1500.2);
    Risks.Tally tally = new Risks.Tally(tolerance, new Interval(1499.82, 1500.18), normal(0.04));
    Risks.Tally acceptAll = new Risks.Tally(tolerance, new Interval(-INFINITY, INFINITY), normal(0.04));
    double step = 1.0 / 300; // both tolerance limits fall between two steps
    for (double z = -5 + step / 2; z < 5; z += step) {
      tally.add(1500 + 0.12 * z, density(z) * step);
      acceptAll.add(1500 + 0.12 * z, density(z) * step);
    }
    Risks risks = tally.risks();
    assertEquals(0.9044, 1 - acceptAll.risks().consumer(), 5e-5);
    assertEquals(0.0099, risks.consumer(), 5e-5);
    assertEquals(0.0690, risks.producer(), 5e-5);
  }

  /** JCGM 106:2012, breakdown voltage of −5.47 V against −5.40 V, u = 0.05 (inputs from memory; result computed). */
  @Test
  void readingPastOneLimitConformsByTheNormalDistribution() {
    assertEquals(0.919, normal(0.05).below(-5.47, -5.40), 5e-4);
  }

  /** JCGM 106:2012, 13.6 in 12.5 to 16.3, u = 1.8 (inputs from memory; result computed). */
  @Test
  void readingBetweenTwoLimitsConformsByTheNormalDistribution() {
    assertEquals(0.663, normal(1.8).between(13.6, 12.5, 16.3), 5e-4);
  }

  /** ±(1 % + 3 digits): figures of a meter maker's help page, u = a / √3 by GUM 4.3.7 (computed). */
  @Test
  void accuracyIsARectangle() {
    MeterError.Rectangular error = MeterError.of(Meter.common().scale(Quantity.AC_VOLTS).orElseThrow());
    assertEquals(1.5, error.halfWidth(120), 1e-12);
    assertEquals(0.54, error.halfWidth(24), 1e-12);
    MeterError.Rectangular fine = new MeterError.Rectangular(0.01, 0.03);
    assertEquals(0.27, fine.halfWidth(24), 1e-12);
    assertEquals(0.156, fine.standardUncertainty(24), 5e-4);
    assertEquals(0.5, error.below(24, 24), 1e-12);
    assertEquals(1, error.below(24, 24.54), 1e-12);
    assertEquals(0, error.below(24, 23.46), 1e-12);
  }

  @Test
  void meterWithoutErrorDecidesAlways() {
    MeterError exact = new MeterError.Rectangular(0, 0);
    assertEquals(1, exact.below(4.9, 5));
    assertEquals(0, exact.below(5, 5));
  }

  /** ISO 14253-1: 10.00 ± 0.05 with U = 0.04 accepts to 10.01 and rejects from 10.09 (computed from the rule). */
  @Test
  void nearALimitNothingIsDecided() {
    Interval tolerance = new Interval(9.95, 10.05);
    assertEquals(Verdict.INCONCLUSIVE, Verdict.of(10.03, tolerance, 0.04));
    assertEquals(Verdict.INSIDE, Verdict.of(10.0099, tolerance, 0.04));
    assertEquals(Verdict.OUTSIDE, Verdict.of(10.0901, tolerance, 0.04));
    assertEquals(Verdict.INSIDE, Verdict.of(10.0099, new Interval(-INFINITY, 10.05), 0.04));
  }

  /** A window of 20 to 28 V read within 0.27 V accepts 20.31 to 27.69 V when U is taken off (computed). */
  @Test
  void guardedWindowIsNarrower() {
    double expanded = 2 * 0.27 / Math.sqrt(3);
    Interval window = new Interval(20, 28);
    assertEquals(Verdict.INSIDE, Verdict.of(20.3118, window, expanded));
    assertEquals(Verdict.INCONCLUSIVE, Verdict.of(20.3117, window, expanded));
    assertEquals(Verdict.INSIDE, Verdict.of(27.6882, window, expanded));
    assertEquals(Verdict.INCONCLUSIVE, Verdict.of(27.6883, window, expanded));
  }
}
