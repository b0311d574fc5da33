package rungbook.circuit;

/** The inner loops: one complex operation for every sample. */
final class Kernel {

  private Kernel() {}

  static void add(double[] xr, double[] xi, double[] yr, double[] yi) {
    for (int s = 0; s < xr.length; s++) {
      xr[s] += yr[s];
    }
    for (int s = 0; s < xi.length; s++) {
      xi[s] += yi[s];
    }
  }

  static void subtract(double[] xr, double[] xi, double[] yr, double[] yi) {
    for (int s = 0; s < xr.length; s++) {
      xr[s] -= yr[s];
    }
    for (int s = 0; s < xi.length; s++) {
      xi[s] -= yi[s];
    }
  }

  /** x += a b. */
  static void addProduct(double[] xr, double[] xi, double[] ar, double[] ai, double[] br, double[] bi) {
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
  static void subtractProduct(double[] xr, double[] xi, double[] ar, double[] ai, double[] br, double[] bi) {
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
  static void multiply(double[] xr, double[] xi, double[] ar, double[] ai) {
    for (int s = 0; s < xr.length; s++) {
      double p = xr[s];
      double q = xi[s];
      xr[s] = p * ar[s] - q * ai[s];
      xi[s] = p * ai[s] + q * ar[s];
    }
  }

  /** x = 1 / x. */
  static void invert(double[] xr, double[] xi) {
    for (int s = 0; s < xr.length; s++) {
      double p = xr[s];
      double q = xi[s];
      double over = 1 / (p * p + q * q);
      xr[s] = p * over;
      xi[s] = -q * over;
    }
  }
}
