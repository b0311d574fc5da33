package rungbook.proof.accounting;

import rungbook.tree.Meter;

/**
 * How the shown reading spreads around the true value, in the sense of JCGM 106: a probability, given what is known of
 * the meter.
 */
@FunctionalInterface
public interface MeterError {

  /** The probability that a true value is shown as less than a limit. */
  double below(double value, double limit);

  /** The probability that a true value is shown between two limits, the lower one included. */
  default double between(double value, double low, double high) {
    return below(value, high) - below(value, low);
  }

  /** Anywhere within the stated accuracy, ±(percent of reading + digits), with equal probability (GUM 4.3.7). */
  static Rectangular of(Meter.Scale scale) {
    double digit = scale.digit().doubleValue();
    return new Rectangular(scale.percent().doubleValue() / 100, scale.digits().doubleValue() * digit);
  }

  /**
   * @param share of the reading
   * @param constant in the quantity's unit
   */
  record Rectangular(double share, double constant) implements MeterError {

    /** The half width {@code a} at a value. */
    public double halfWidth(double value) {
      return share * Math.abs(value) + constant;
    }

    /** The standard uncertainty {@code u = a / √3}. */
    public double standardUncertainty(double value) {
      return halfWidth(value) / Math.sqrt(3);
    }

    @Override
    public double below(double value, double limit) {
      double a = halfWidth(value);
      if (a == 0) {
        return value < limit ? 1 : 0;
      }
      return Math.max(0, Math.min(1, (limit - value + a) / (2 * a)));
    }
  }
}
