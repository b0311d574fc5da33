package rungbook.circuit.solver;

import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.RankOneUpdate;
import rungbook.circuit.network.RowPool;

/**
 * A network eliminated node by node, for every sample at once.
 *
 * <p>Each step turns a star into a mesh: with Y the sum of a node's admittances, its neighbours i and j gain
 * y_i y_j / Y between them. Diagonals are never formed, so a leak of nanosiemens beside a contact of fifty siemens
 * is not lost to rounding, which an ordinary factorisation of the node matrix would do; stray voltages need it.
 */
public final class FactorizedNetwork {

  private final EliminationOrder mesh;
  private final ComplexRows slots;
  private final ComplexRows inverse;

  FactorizedNetwork(EliminationOrder mesh, RowPool pool) {
    this.mesh = mesh;
    slots = pool.take(mesh.slotCount());
    inverse = pool.take(mesh.nodeCount());
  }

  void release(RowPool pool) {
    pool.give(slots);
    pool.give(inverse);
  }

  /** Adds an admittance between two nodes. */
  void add(RankOneUpdate siemens) {
    if (siemens.a() != siemens.b()) {
      int slot = mesh.slot(siemens.a(), siemens.b());
      ComplexKernels.add(slots.re[slot], slots.im[slot], siemens.re(), siemens.im());
    }
  }

  /** Ties a node of a floating island to ground; no current flows there, so the size is free. */
  void tie(int node) {
    double[] re = slots.re[mesh.slot(0, node)];
    for (int s = 0; s < re.length; s++) {
      re[s] += 1;
    }
  }

  /** Eliminates; afterwards a slot holds the share of a node's current that goes to its neighbour. */
  void factor() {
    for (int node : mesh.order()) {
      int[] to = mesh.slotsTo(node);
      double[] yr = inverse.re[node];
      double[] yi = inverse.im[node];
      for (int slot : to) {
        ComplexKernels.add(yr, yi, slots.re[slot], slots.im[slot]);
      }
      ComplexKernels.invert(yr, yi);
      spread(node, to);
    }
  }

  private void spread(int node, int[] to) {
    for (int i = 0; i < to.length; i++) {
      int slot = to[i];
      for (int j = 0; j < i; j++) {
        // neighbour j's slot already holds its share y_j / Y
        int target = mesh.between(node, j, i);
        ComplexKernels.addProduct(slots.re[target], slots.im[target], slots.re[slot], slots.im[slot], slots.re[to[j]],
            slots.im[to[j]]);
      }
      ComplexKernels.multiply(slots.re[slot], slots.im[slot], inverse.re[node], inverse.im[node]);
    }
  }

  /**
   * Replaces the currents into each node by the voltages they cause. Row 0 is ground.
   *
   * @param fed which nodes have a current; only they and what lies between them and ground is passed on
   */
  void solve(ComplexRows x, boolean[] fed) {
    int[] order = mesh.order();
    for (int node : order) {
      if (fed[node]) {
        forward(node, x, fed);
      }
    }
    for (int step = order.length - 1; step >= 0; step--) {
      backward(order[step], x);
    }
  }

  private void forward(int node, ComplexRows x, boolean[] fed) {
    int[] neighbours = mesh.neighbours(node);
    int[] to = mesh.slotsTo(node);
    for (int i = 0; i < to.length; i++) {
      int other = neighbours[i];
      if (other != 0) {
        fed[other] = true;
        ComplexKernels.addProduct(x.re[other], x.im[other], slots.re[to[i]], slots.im[to[i]], x.re[node], x.im[node]);
      }
    }
  }

  private void backward(int node, ComplexRows x) {
    ComplexKernels.multiply(x.re[node], x.im[node], inverse.re[node], inverse.im[node]);
    int[] neighbours = mesh.neighbours(node);
    int[] to = mesh.slotsTo(node);
    for (int i = 0; i < to.length; i++) {
      int other = neighbours[i];
      if (other != 0) {
        ComplexKernels.addProduct(x.re[node], x.im[node], slots.re[to[i]], slots.im[to[i]], x.re[other], x.im[other]);
      }
    }
  }

  /**
   * The impedance between two nodes with every source at rest: f D⁻¹ fᵀ with f the currents that a test current of
   * one ampere leaves at each node as it is eliminated. Only nodes on the two ways down to ground take part.
   *
   * @param f room for a row a node, all zero, and left so
   */
  void seenFrom(int a, int b, ComplexRows f, double[] re, double[] im) {
    java.util.Arrays.fill(re, 0);
    java.util.Arrays.fill(im, 0);
    if (a == b) {
      return;
    }
    boolean[] touched = new boolean[mesh.nodeCount()];
    inject(a, 1, f, touched);
    inject(b, -1, f, touched);
    int start = Math.min(a == 0 ? Integer.MAX_VALUE : mesh.turn(a), b == 0 ? Integer.MAX_VALUE : mesh.turn(b));
    for (int step = start; step < mesh.order().length; step++) {
      int node = mesh.order()[step];
      if (touched[node]) {
        forward(node, f, touched);
        square(f.re[node], f.im[node], inverse.re[node], inverse.im[node], re, im);
      }
    }
  }

  private static void inject(int node, double amps, ComplexRows f, boolean[] touched) {
    if (node != 0) {
      java.util.Arrays.fill(f.re[node], amps);
      touched[node] = true;
    }
  }

  /** z += f² d, and clears f. */
  private static void square(double[] fr, double[] fi, double[] dr, double[] di, double[] zr, double[] zi) {
    for (int s = 0; s < fr.length; s++) {
      double p = fr[s] * fr[s] - fi[s] * fi[s];
      double q = 2 * fr[s] * fi[s];
      zr[s] += p * dr[s] - q * di[s];
      zi[s] += p * di[s] + q * dr[s];
    }
    java.util.Arrays.fill(fr, 0);
    java.util.Arrays.fill(fi, 0);
  }
}
