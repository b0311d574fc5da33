package rungbook.circuit.network;

/**
 * Complex numbers as {@code re[row][sample]} and {@code im[row][sample]}; the row is a node, a branch or a slot. The
 * samples of a row are contiguous so that loops over them run in vector registers. A row may be shared with other rows,
 * and null where every number is zero.
 */
public final class ComplexRows {

  public final double[][] re;
  public final double[][] im;
  private final int samples;

  /** Rows of zeros. */
  public ComplexRows(int rows, int samples) {
    this(new double[rows][samples], new double[rows][samples], samples);
  }

  private ComplexRows(double[][] re, double[][] im, int samples) {
    this.re = re;
    this.im = im;
    this.samples = samples;
  }

  /** Rows without numbers yet: each is null until it is pointed at another or first written. */
  public static ComplexRows empty(int rows, int samples) {
    return new ComplexRows(new double[rows][], new double[rows][], samples);
  }

  public void set(int row, int sample, Phasor value) {
    re[row][sample] = value.re();
    im[row][sample] = value.im();
  }

  /** Allocates a row at its first use; its numbers are left as they are. */
  public void ensure(int row) {
    if (re[row] == null) {
      re[row] = new double[samples];
      im[row] = new double[samples];
    }
  }
}
