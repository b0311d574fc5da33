package rungbook.proof.accounting;

/**
 * The distribution of the healthy system's readings at a check, in the states in which the check is met: shares in bins
 * of equal width from zero to {@code high}; the last bin takes all beyond.
 */
public record ReadingHistogram(double high, double[] healthy) {

  /** Enough for a small picture. */
  public static final int BINS = 60;

  /** Adds up readings. */
  static final class Accumulator {
    private final double high;
    private final double[] healthy = new double[BINS];
    private double all;

    Accumulator(double high) {
      this.high = high;
    }

    void add(double reading) {
      healthy[(int) Math.max(0, Math.min(BINS - 1, reading / high * BINS))]++;
      all++;
    }

    ReadingHistogram histogram() {
      double[] shares = new double[BINS];
      for (int bin = 0; bin < BINS; bin++) {
        shares[bin] = all == 0 ? 0 : healthy[bin] / all;
      }
      return new ReadingHistogram(high, shares);
    }
  }
}
