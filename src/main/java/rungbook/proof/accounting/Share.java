package rungbook.proof.accounting;

/** Shares of installations, from 0 to 1, and the least that is reported. */
public final class Share {

  /** Less than this is the rounding of the sums, and no installation. */
  public static final double ROUNDING = 1e-9;

  /** A smaller share is in the tables only. */
  private static final double RARE = 0.01;

  private Share() {}

  /** Whether a share is large enough to report. */
  public static boolean isReported(double share) {
    return share >= RARE;
  }

  /** Whether all are, but for rounding. */
  public static boolean isAll(double share) {
    return share > 1 - ROUNDING;
  }
}
