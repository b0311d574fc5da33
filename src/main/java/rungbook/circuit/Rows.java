package rungbook.circuit;

/** Complex numbers, a row for each quantity and a column for each sample; rows lie apart so that loops over samples run in vector registers. */
final class Rows {

  final double[][] re;
  final double[][] im;

  Rows(int rows, int samples) {
    re = new double[rows][samples];
    im = new double[rows][samples];
  }

  void set(int row, int sample, Phasor value) {
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
  void set(Rows other) {
    for (int i = 0; i < re.length; i++) {
      System.arraycopy(other.re[i], 0, re[i], 0, re[i].length);
      System.arraycopy(other.im[i], 0, im[i], 0, im[i].length);
    }
  }
}
