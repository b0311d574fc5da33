package rungbook.circuit.network;

/**
 * The inner loops: one complex operation on each sample. Real and imaginary parts are arrays of [sample].
 *
 * <p>Each loop is short, since JDK 17 puts no loop into vector registers that works on more than six or seven arrays:
 * two such loops one after the other take less than half the time of one for both.
 */
public final class ComplexKernels {

  private ComplexKernels() {}

  /** x += y. */
  public static void add(double[] xr, double[] xi, double[] yr, double[] yi) {
    for (int s = 0; s < xr.length; s++) {
      xr[s] += yr[s];
      xi[s] += yi[s];
    }
  }

  /** x = a + b. */
  public static void sum(double[] xr, double[] xi, double[] ar, double[] ai, double[] br, double[] bi) {
    for (int s = 0; s < xr.length; s++) {
      xr[s] = ar[s] + br[s];
      xi[s] = ai[s] + bi[s];
    }
  }

  /** x = a − b. */
  public static void difference(double[] xr, double[] xi, double[] ar, double[] ai, double[] br, double[] bi) {
    for (int s = 0; s < xr.length; s++) {
      xr[s] = ar[s] - br[s];
      xi[s] = ai[s] - bi[s];
    }
  }

  /** x −= y. */
  public static void subtract(double[] xr, double[] xi, double[] yr, double[] yi) {
    for (int s = 0; s < xr.length; s++) {
      xr[s] -= yr[s];
      xi[s] -= yi[s];
    }
  }

  /** x = a b. */
  public static void product(double[] xr, double[] xi, double[] ar, double[] ai, double[] br, double[] bi) {
    for (int s = 0; s < xr.length; s++) {
      double p = ar[s];
      double q = ai[s];
      double r = br[s];
      double t = bi[s];
      xr[s] = p * r - q * t;
      xi[s] = p * t + q * r;
    }
  }

  /** x += a b. */
  public static void addProduct(double[] xr, double[] xi, double[] ar, double[] ai, double[] br, double[] bi) {
    for (int s = 0; s < xr.length; s++) {
      double p = ar[s];
      double q = ai[s];
      double r = br[s];
      double t = bi[s];
      xr[s] += p * r - q * t;
      xi[s] += p * t + q * r;
    }
  }

  /** x = 1 / y. */
  public static void inverse(double[] xr, double[] xi, double[] yr, double[] yi) {
    for (int s = 0; s < xr.length; s++) {
      double p = yr[s];
      double q = yi[s];
      double over = 1 / (p * p + q * q);
      xr[s] = p * over;
      xi[s] = -q * over;
    }
  }

  /** z += a² b. */
  public static void addSquare(double[] zr, double[] zi, double[] ar, double[] ai, double[] br, double[] bi) {
    for (int s = 0; s < zr.length; s++) {
      double f = ar[s];
      double g = ai[s];
      double r = br[s];
      double t = bi[s];
      double p = f * f - g * g;
      double q = f * g + f * g;
      zr[s] += p * r - q * t;
      zi[s] += p * t + q * r;
    }
  }

  /** x = |a − b|². */
  public static void squaredDistance(double[] x, double[] ar, double[] ai, double[] br, double[] bi) {
    for (int s = 0; s < x.length; s++) {
      double p = ar[s] - br[s];
      double q = ai[s] - bi[s];
      x[s] = p * p + q * q;
    }
  }

  /** x = |a|². */
  public static void squaredMagnitude(double[] x, double[] ar, double[] ai) {
    for (int s = 0; s < x.length; s++) {
      x[s] = ar[s] * ar[s] + ai[s] * ai[s];
    }
  }
}
