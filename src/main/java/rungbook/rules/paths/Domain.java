package rungbook.rules.paths;

import java.util.List;

/**
 * The possible answers of a question, cut into pieces that no way on divides. Each piece is a bit, from 0.
 *
 * @param size the number of pieces
 * @param taken by check, then by way: the pieces that take that way; {@link #ANY} for an answer that could not be read
 */
record Domain(int size, List<long[]> taken) {

  /** The most pieces that are tracked, so that they fit a word; no real question has more. */
  static final int MOST = 62;

  /** For an answer that could not be read, which may accept anything. */
  static final long ANY = -1L;

  boolean canBeFollowed() {
    return size <= MOST;
  }

  /** Every piece. */
  long all() {
    return -1L >>> (64 - size);
  }
}
