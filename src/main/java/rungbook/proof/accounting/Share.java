package rungbook.proof.accounting;

/** Shares of installations, from 0 to 1, and from where on they are worth a word. */
public final class Share {

  /** Less than this is the rounding of the sums, and no installation. */
  public static final double ROUNDING = 1e-9;

  /** What is rarer than this is said in the tables, not reported. */
  private static final double RARE = 0.01;

  private Share() {}

  /** Whether so many are concerned that it is reported. */
  public static boolean isReported(double share) {
    return share >= RARE;
  }

  /** Whether all are, but for rounding. */
  public static boolean isAll(double share) {
    return share > 1 - ROUNDING;
  }
}
