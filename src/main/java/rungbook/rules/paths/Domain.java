package rungbook.rules.paths;

import java.util.List;

/**
 * The answers that a question can have, cut into pieces no way on divides, as bits from 0.
 *
 * @param size how many pieces
 * @param taken by check that asks it, then by way: the pieces that lead that way; {@link #ANY} for an answer that could
 * not be read
 */
record Domain(int size, List<long[]> taken) {

  /** More pieces than a word holds are not followed; no meter is asked for that many limits. */
  static final int MOST = 62;

  /** An answer that could not be read may take anything. */
  static final long ANY = -1L;

  boolean canBeFollowed() {
    return size <= MOST;
  }

  /** Every piece. */
  long all() {
    return -1L >>> 64 - size;
  }
}
