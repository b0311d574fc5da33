package rungbook.rules.flow;

import java.util.Arrays;

/**
 * Facts that become true and facts that become false, in words of 64 bits: the effect of a step, or what may hold at a
 * point in it.
 */
final class FactDelta {

  final long[] on;
  final long[] off;

  FactDelta(int words) {
    this.on = new long[words];
    this.off = new long[words];
  }

  void set(int fact) {
    on[fact >> 6] |= 1L << fact;
    off[fact >> 6] &= ~(1L << fact);
  }

  void clear(int fact) {
    on[fact >> 6] &= ~(1L << fact);
    off[fact >> 6] |= 1L << fact;
  }

  /** Clears the facts from {@code from} (included) to {@code to} (not included). */
  void clear(int from, int to) {
    for (int word = from >> 6; word <= (to - 1) >> 6; word++) {
      long mask = mask(from, to, word);
      on[word] &= ~mask;
      off[word] |= mask;
    }
  }

  /** The bits of one word for the facts from {@code from} (included) to {@code to} (not included). */
  static long mask(int from, int to, int word) {
    int low = Math.max(from - (word << 6), 0);
    int high = Math.min(to - (word << 6), 64);
    return low >= high ? 0 : -1L >>> (64 - (high - low)) << low;
  }

  void reset() {
    Arrays.fill(on, 0);
    Arrays.fill(off, 0);
  }
}
