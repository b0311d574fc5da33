package rungbook.proof.pairs;

/**
 * How many pairs are followed, and on how many installations.
 *
 * @param pairs the likeliest so many
 * @param drawn installations of each
 */
public record PairBounds(int pairs, int drawn) {

  /** A share of one in a hundred shows in 64 installations in one of two cases, and costs a quarter of 256. */
  public static final int USUAL_DRAWN = 64;

  /** Those of a hundred faults. */
  public static final int USUAL_PAIRS = 5_000;
}
