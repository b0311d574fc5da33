package rungbook.circuit.solver;

import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;

/**
 * Rows that are sums. A sum of one row is that row itself, and a sum of nothing is null; only a real sum takes space
 * and time.
 */
final class SummedRows {

  private final ComplexRows rows;
  private final ComplexRows space;

  SummedRows(int count, int samples) {
    rows = ComplexRows.empty(count, samples);
    space = ComplexRows.empty(count, samples);
  }

  /** The numbers; callers must not modify them. */
  ComplexRows rows() {
    return rows;
  }

  boolean has(int row) {
    return rows.re[row] != null;
  }

  /** Takes over all rows of another; what is added afterward goes to space of its own. */
  void become(SummedRows other) {
    System.arraycopy(other.rows.re, 0, rows.re, 0, rows.re.length);
    System.arraycopy(other.rows.im, 0, rows.im, 0, rows.im.length);
  }

  void clear(int row) {
    rows.re[row] = null;
    rows.im[row] = null;
  }

  /** Starts a sum with a row. */
  void set(int row, double[] re, double[] im) {
    rows.re[row] = re;
    rows.im[row] = im;
  }

  void add(int row, double[] re, double[] im) {
    if (!has(row)) {
      set(row, re, im);
    } else if (isInSpace(row)) {
      ComplexKernels.add(rows.re[row], rows.im[row], re, im);
    } else {
      space.ensure(row);
      ComplexKernels.sum(space.re[row], space.im[row], rows.re[row], rows.im[row], re, im);
      set(row, space.re[row], space.im[row]);
    }
  }

  void addProduct(int row, double[] ar, double[] ai, double[] br, double[] bi) {
    if (isInSpace(row)) {
      ComplexKernels.addProduct(rows.re[row], rows.im[row], ar, ai, br, bi);
      return;
    }
    space.ensure(row);
    ComplexKernels.product(space.re[row], space.im[row], ar, ai, br, bi);
    if (has(row)) {
      ComplexKernels.add(space.re[row], space.im[row], rows.re[row], rows.im[row]);
    }
    set(row, space.re[row], space.im[row]);
  }

  /** Replaces a row by its inverse. */
  void invert(int row) {
    space.ensure(row);
    ComplexKernels.inverse(space.re[row], space.im[row], rows.re[row], rows.im[row]);
    set(row, space.re[row], space.im[row]);
  }

  private boolean isInSpace(int row) {
    return has(row) && rows.re[row] == space.re[row];
  }
}
