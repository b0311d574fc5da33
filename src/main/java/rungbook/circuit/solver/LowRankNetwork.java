package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.RankOneUpdate;

/**
 * A solved network with a few rank-one changes (Sherman and Morrison 1950; Woodbury 1950).
 *
 * <p>A change δ of the admittance between nodes a and b, with z the node voltages of one ampere from b to a:
 * v −= z (δ / (1 + δ z_ab)) v_ab, where x_ab = x_a − x_b. {@code columns} holds z of each change, [node][sample];
 * {@code factors} holds δ / (1 + δ z_ab) as [re, im][sample].
 */
public final class LowRankNetwork implements Network {

  /**
   * Below this, |1 + δ z_ab| has lost too many digits to cancellation: the change opens a conductor whose far side
   * then has only leakage. Such a case is solved in full.
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
   * Applies the changes; empty if that would lose too many digits or connect two components.
   *
   * @param volts the base network's node voltages for the changed network's currents; this method overwrites them
   */
  public static Optional<Network> of(SolvedNetwork base, ComplexRows volts, List<RankOneUpdate> updates) {
    var changed = new LowRankNetwork(base, volts);
    if (updates.stream().anyMatch(u -> !base.connected(u.a(), u.b()))) {
      changed.release();
      return Optional.empty();
    }
    var columns = new ArrayList<ComplexRows>();
    updates.forEach(update -> columns.add(base.column(update.a(), update.b())));
    for (int k = 0; k < updates.size(); k++) {
      if (!changed.apply(updates.get(k), columns.get(k))) {
        columns.subList(k, columns.size()).forEach(base.pool()::give);
        changed.release();
        return Optional.empty();
      }
      for (int later = k + 1; later < updates.size(); later++) {
        changed.subtract(columns.get(later), k, updates.get(k).a(), updates.get(k).b());
      }
    }
    return Optional.of(changed);
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

  /** Computes δ / (1 + δ z_ab) of each sample; returns the smallest |1 + δ z_ab|. */
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

  /** x −= z_k c_k (x_a − x_b), for every node; c_k is factor k. */
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
  public boolean connected(int a, int b) {
    return base.connected(a, b);
  }

  @Override
  public void impedanceBetween(int a, int b, double[] re, double[] im) {
    base.impedanceBetween(a, b, re, im);
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
