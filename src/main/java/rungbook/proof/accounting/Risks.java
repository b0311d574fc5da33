package rungbook.proof.accounting;

/**
 * Risks of a decision rule in the sense of JCGM 106: tolerance and acceptance are intervals with the lower end
 * included.
 *
 * @param consumer the probability that an item is outside and accepted
 * @param producer the probability that an item is inside and rejected
 */
public record Risks(double consumer, double producer) {

  /** From one to the other; an end may be infinite. */
  public record Interval(double low, double high) {
    boolean contains(double value) {
      return low <= value && (value < high || high == Double.POSITIVE_INFINITY);
    }
  }

  /** Adds up items one by one. */
  public static final class Tally {
    private final Interval tolerance;
    private final Interval acceptance;
    private final MeterError error;
    private double whole;
    private double consumer;
    private double producer;

    public Tally(Interval tolerance, Interval acceptance, MeterError error) {
      this.tolerance = tolerance;
      this.acceptance = acceptance;
      this.error = error;
    }

    /**
     * @param value the true value
     * @param weight how much the item counts
     */
    public void add(double value, double weight) {
      double accepted = error.between(value, acceptance.low(), acceptance.high());
      boolean inside = tolerance.contains(value);
      whole += weight;
      consumer += inside ? 0 : weight * accepted;
      producer += inside ? weight * (1 - accepted) : 0;
    }

    public Risks risks() {
      return whole == 0 ? new Risks(0, 0) : new Risks(consumer / whole, producer / whole);
    }
  }
}
