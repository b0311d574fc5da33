package rungbook.circuit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;

/** Rows to be used again: a dictionary would otherwise spend half its time on clearing new memory. */
final class Pool {

  private final int samples;
  private final Map<Integer, Deque<Rows>> idle = new HashMap<>();

  Pool(int samples) {
    this.samples = samples;
  }

  /** Rows of zeros. */
  Rows take(int rows) {
    Rows used = idle.computeIfAbsent(rows, size -> new ArrayDeque<>()).poll();
    if (used == null) {
      return new Rows(rows, samples);
    }
    used.clear();
    return used;
  }

  Rows copy(Rows original) {
    Rows used = idle.computeIfAbsent(original.re.length, size -> new ArrayDeque<>()).poll();
    Rows copy = used == null ? new Rows(original.re.length, samples) : used;
    copy.set(original);
    return copy;
  }

  /** Whoever gives rows back keeps no hold of them. */
  void give(Rows rows) {
    idle.computeIfAbsent(rows.re.length, size -> new ArrayDeque<>()).push(rows);
  }
}
