package rungbook.circuit.network;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;

/** Reusable rows: without a pool, half of a dictionary's time goes to clearing new memory. */
public final class RowPool {

  private final int samples;
  private final Map<Integer, Deque<ComplexRows>> idle = new HashMap<>();

  public RowPool(int samples) {
    this.samples = samples;
  }

  /** Takes rows of zeros. */
  public ComplexRows take(int rows) {
    ComplexRows used = idle.computeIfAbsent(rows, size -> new ArrayDeque<>()).poll();
    if (used == null) {
      return new ComplexRows(rows, samples);
    }
    used.clear();
    return used;
  }

  /** Takes a copy of rows. */
  public ComplexRows copy(ComplexRows original) {
    ComplexRows used = idle.computeIfAbsent(original.re.length, size -> new ArrayDeque<>()).poll();
    ComplexRows copy = used == null ? new ComplexRows(original.re.length, samples) : used;
    copy.set(original);
    return copy;
  }

  /** Returns rows to the pool; the caller must not use them again. */
  public void give(ComplexRows rows) {
    idle.computeIfAbsent(rows.re.length, size -> new ArrayDeque<>()).push(rows);
  }
}
