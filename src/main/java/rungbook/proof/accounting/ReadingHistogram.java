package rungbook.proof.accounting;

/**
 * The distribution of the readings at a check: shares in bins of equal width from zero to {@code high}; the last bin
 * takes all beyond.
 *
 * @param healthy shares of the healthy system's readings in the states in which the check is met
 * @param arriving shares of the readings of the faults that arrive, by likelihood
 * @param overload the share of the arriving that overloads the display
 */
public record ReadingHistogram(double high, double[] healthy, double[] arriving, double overload) {

  /** Enough for a small picture. */
  public static final int BINS = 60;

  /** Adds up readings. */
  static final class Accumulator {
    private final double high;
    private final double[] healthy = new double[BINS];
    private final double[] arriving = new double[BINS];
    private double overload;

    Accumulator(double high) {
      this.high = high;
    }

    void add(double reading, double healthyWeight, double arrivingWeight) {
      if (reading == Double.POSITIVE_INFINITY) {
        overload += arrivingWeight;
        return;
      }
      int bin = (int) Math.max(0, Math.min(BINS - 1, reading / high * BINS));
      healthy[bin] += healthyWeight;
      arriving[bin] += arrivingWeight;
    }

    ReadingHistogram histogram() {
      double all = overload;
      for (double bin : arriving) {
        all += bin;
      }
      return new ReadingHistogram(high, shares(healthy, sum(healthy)), shares(arriving, all),
          all == 0 ? 0 : overload / all);
    }

    private static double sum(double[] bins) {
      double sum = 0;
      for (double bin : bins) {
        sum += bin;
      }
      return sum;
    }

    private static double[] shares(double[] bins, double whole) {
      double[] shares = new double[bins.length];
      for (int i = 0; i < bins.length; i++) {
        shares[i] = whole == 0 ? 0 : bins[i] / whole;
      }
      return shares;
    }
  }
}
