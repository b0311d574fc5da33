package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.RankOneUpdate;

/**
 * A network that differs from a solved one by a few changes of rank one (Sherman, Morrison and Woodbury).
 *
 * <p>For each change δ between nodes a and b, with z the voltages of one ampere there: v −= z (δ / (1 + δ z_ab)) v_ab.
 */
public final class LowRankNetwork implements Network {

  /**
   * Below this 1 + δ z has lost too many digits: a conductor was opened whose far side hangs on leakage alone, and
   * nearly all of the solved network's digits say so. Such a change is solved in full.
   */
  static final double LEAST_DIVISOR = 1e-5;

  private final SolvedNetwork base;
  private final ComplexRows volts;
  private final List<ComplexRows> columns = new ArrayList<>();
  private final List<double[][]> factors = new ArrayList<>();

  private LowRankNetwork(SolvedNetwork base, ComplexRows volts) {
    this.base = base;
    this.volts = volts;
  }

  /**
   * Applies the changes; empty where that would cost too many digits or tie a floating part to another.
   *
   * @param volts the solved network's voltages, in the changed network's currents; they are overwritten
   */
  public static Optional<Network> of(SolvedNetwork base, ComplexRows volts, List<RankOneUpdate> updates) {
    var modified = new LowRankNetwork(base, volts);
    if (updates.stream().anyMatch(u -> !base.together(u.a(), u.b()))) {
      modified.release();
      return Optional.empty();
    }
    var columns = new ArrayList<ComplexRows>();
    updates.forEach(update -> columns.add(base.column(update.a(), update.b())));
    for (int k = 0; k < updates.size(); k++) {
      if (!modified.apply(updates.get(k), columns.get(k))) {
        columns.subList(k, columns.size()).forEach(base.pool()::give);
        modified.release();
        return Optional.empty();
      }
      for (int later = k + 1; later < updates.size(); later++) {
        modified.subtract(columns.get(later), k, updates.get(k).a(), updates.get(k).b());
      }
    }
    return Optional.of(modified);
  }

  private boolean apply(RankOneUpdate update, ComplexRows column) {
    int samples = update.re().length;
    double[][] factor = new double[2][samples];
    double worst = divide(update, column, factor);
    if (worst < LEAST_DIVISOR) {
      return false;
    }
    columns.add(column);
    factors.add(factor);
    subtract(volts, columns.size() - 1, update.a(), update.b());
    return true;
  }

  /** δ / (1 + δ z) for every sample; gives the least size of the divisor. */
  private static double divide(RankOneUpdate update, ComplexRows z, double[][] factor) {
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < factor[0].length; s++) {
      double zr = z.re[update.a()][s] - z.re[update.b()][s];
      double zi = z.im[update.a()][s] - z.im[update.b()][s];
      double dr = update.re()[s];
      double di = update.im()[s];
      double pr = 1 + dr * zr - di * zi;
      double pi = dr * zi + di * zr;
      double square = pr * pr + pi * pi;
      least = Math.min(least, square);
      factor[0][s] = (dr * pr + di * pi) / square;
      factor[1][s] = (di * pr - dr * pi) / square;
    }
    return Math.sqrt(least);
  }

  /** x −= z_k c_k (x_a − x_b), every node. */
  private void subtract(ComplexRows x, int k, int a, int b) {
    ComplexRows z = columns.get(k);
    double[][] c = factors.get(k);
    double[] tr = new double[c[0].length];
    double[] ti = new double[tr.length];
    for (int s = 0; s < tr.length; s++) {
      double xr = x.re[a][s] - x.re[b][s];
      double xi = x.im[a][s] - x.im[b][s];
      tr[s] = xr * c[0][s] - xi * c[1][s];
      ti[s] = xr * c[1][s] + xi * c[0][s];
    }
    for (int node = 1; node < x.re.length; node++) {
      ComplexKernels.subtractProduct(x.re[node], x.im[node], z.re[node], z.im[node], tr, ti);
    }
  }

  @Override
  public ComplexRows volts() {
    return volts;
  }

  @Override
  public boolean together(int a, int b) {
    return base.together(a, b);
  }

  @Override
  public void seenFrom(int a, int b, double[] re, double[] im) {
    base.seenFrom(a, b, re, im);
    for (int k = 0; k < columns.size(); k++) {
      ComplexRows z = columns.get(k);
      double[][] c = factors.get(k);
      for (int s = 0; s < re.length; s++) {
        double zr = z.re[a][s] - z.re[b][s];
        double zi = z.im[a][s] - z.im[b][s];
        double squareRe = zr * zr - zi * zi;
        double squareIm = 2 * zr * zi;
        re[s] -= squareRe * c[0][s] - squareIm * c[1][s];
        im[s] -= squareRe * c[1][s] + squareIm * c[0][s];
      }
    }
  }

  @Override
  public void release() {
    base.pool().give(volts);
    columns.forEach(base.pool()::give);
  }
}
