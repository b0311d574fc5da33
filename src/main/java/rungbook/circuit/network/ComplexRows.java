package rungbook.circuit.network;

/**
 * Complex numbers, a row for each quantity and a column for each sample; rows lie apart so that loops over samples run
 * in vector registers.
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
      java.util.Arrays.fill(re[i], 0);
      java.util.Arrays.fill(im[i], 0);
    }
  }

  /** Takes over all numbers of rows of the same size. */
  public void set(ComplexRows other) {
    for (int i = 0; i < re.length; i++) {
      System.arraycopy(other.re[i], 0, re[i], 0, re[i].length);
      System.arraycopy(other.im[i], 0, im[i], 0, im[i].length);
    }
  }
}
