package rungbook.circuit.network;

import java.util.Arrays;

/**
 * Complex numbers as {@code re[row][sample]} and {@code im[row][sample]}; the row is a node, a branch or a slot. The
 * samples of a row are contiguous so that loops over them run in vector registers.
 */
public final class ComplexRows {

  public final double[][] re;
  public final double[][] im;

  public ComplexRows(int rows, int samples) {
    re = new double[rows][samples];
    im = new double[rows][samples];
  }

  public void set(int row, int sample, Phasor value) {
    re[row][sample] = value.re();
    im[row][sample] = value.im();
  }

  void clear() {
    for (int i = 0; i < re.length; i++) {
      Arrays.fill(re[i], 0);
      Arrays.fill(im[i], 0);
    }
  }

  /** Copies all numbers from rows of the same size. */
  public void set(ComplexRows other) {
    for (int i = 0; i < re.length; i++) {
      System.arraycopy(other.re[i], 0, re[i], 0, re[i].length);
      System.arraycopy(other.im[i], 0, im[i], 0, im[i].length);
    }
  }
}
