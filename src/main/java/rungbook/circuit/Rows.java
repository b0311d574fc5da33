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

  Rows copy() {
    var copy = new Rows(re.length, 0);
    for (int i = 0; i < re.length; i++) {
      copy.re[i] = re[i].clone();
      copy.im[i] = im[i].clone();
    }
    return copy;
  }
}
