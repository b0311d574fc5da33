package rungbook.circuit.sequence;

import java.util.Arrays;
import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;

/** What the levels of all networks of a block share: the rows of one level, and the space to compute voltages in. */
final class LevelRows {

  private static final int LEVELS = 4;

  private final byte[][] uniform;
  private final double[] squares;

  LevelRows(int samples) {
    uniform = new byte[LEVELS][samples];
    for (int level = 0; level < LEVELS; level++) {
      Arrays.fill(uniform[level], (byte) level);
    }
    squares = new double[samples];
  }

  /** The row with one level in every sample; callers must not modify it. */
  byte[] of(int level) {
    return uniform[level];
  }

  /** Whether it is one of the rows with one level. */
  boolean isUniform(byte[] row) {
    return row == uniform[row[0]];
  }

  /** The same numbers, in the row that all share where there is one. */
  byte[] shared(byte[] row) {
    return Arrays.equals(row, uniform[row[0]]) ? uniform[row[0]] : row;
  }

  /** Computes |V|² between two nodes, for each sample; valid until the next call. */
  double[] squares(ComplexRows volts, int a, int b) {
    ComplexKernels.squaredDistance(squares, volts.re[a], volts.im[a], volts.re[b], volts.im[b]);
    return squares;
  }
}
