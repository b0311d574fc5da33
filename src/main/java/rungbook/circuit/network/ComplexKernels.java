package rungbook.circuit.network;

/** The inner loops: one complex operation on each sample. Real and imaginary parts are arrays of [sample]. */
public final class ComplexKernels {

  private ComplexKernels() {}

  /** x += y. */
  public static void add(double[] xr, double[] xi, double[] yr, double[] yi) {
    for (int s = 0; s < xr.length; s++) {
      xr[s] += yr[s];
    }
    for (int s = 0; s < xi.length; s++) {
      xi[s] += yi[s];
    }
  }

  /** x −= y. */
  public static void subtract(double[] xr, double[] xi, double[] yr, double[] yi) {
    for (int s = 0; s < xr.length; s++) {
      xr[s] -= yr[s];
    }
    for (int s = 0; s < xi.length; s++) {
      xi[s] -= yi[s];
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

  /** x −= a b. */
  public static void subtractProduct(double[] xr, double[] xi, double[] ar, double[] ai, double[] br, double[] bi) {
    for (int s = 0; s < xr.length; s++) {
      double p = ar[s];
      double q = ai[s];
      double r = br[s];
      double t = bi[s];
      xr[s] -= p * r - q * t;
      xi[s] -= p * t + q * r;
    }
  }

  /** x *= a. */
  public static void multiply(double[] xr, double[] xi, double[] ar, double[] ai) {
    for (int s = 0; s < xr.length; s++) {
      double p = xr[s];
      double q = xi[s];
      xr[s] = p * ar[s] - q * ai[s];
      xi[s] = p * ai[s] + q * ar[s];
    }
  }

  /** x = 1 / x. */
  public static void invert(double[] xr, double[] xi) {
    for (int s = 0; s < xr.length; s++) {
      double p = xr[s];
      double q = xi[s];
      double over = 1 / (p * p + q * q);
      xr[s] = p * over;
      xi[s] = -q * over;
    }
  }
}
