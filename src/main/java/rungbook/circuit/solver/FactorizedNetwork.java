package rungbook.circuit.solver;

import java.util.Arrays;
import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.RankOneUpdate;
import rungbook.circuit.network.RowPool;

/**
 * A network eliminated node by node, for every sample at once. {@code slots} is [slot][sample], siemens before and a
 * share without unit after elimination; {@code inverse} is [node][sample], 1 / Y in ohms.
 *
 * <p>Star-mesh transformation: with Y the sum of a node's admittances, y_i y_j / Y is added between its neighbors i and
 * j. Diagonals are never formed, so a leakage of nanosiemens next to a contact of fifty siemens is not lost to
 * rounding, as it would be in an LU factorization of the node matrix. Stray voltages depend on that leakage.
 */
public final class FactorizedNetwork {

  private final EliminationOrder order;
  private final ComplexRows slots;
  private final ComplexRows inverse;

  FactorizedNetwork(EliminationOrder order, RowPool pool) {
    this.order = order;
    slots = pool.take(order.slotCount());
    inverse = pool.take(order.nodeCount());
  }

  void release(RowPool pool) {
    pool.give(slots);
    pool.give(inverse);
  }

  /** Adds an admittance between two nodes. */
  void add(RankOneUpdate siemens) {
    if (siemens.a() != siemens.b()) {
      int slot = order.slot(siemens.a(), siemens.b());
      ComplexKernels.add(slots.re[slot], slots.im[slot], siemens.re(), siemens.im());
    }
  }

  /** Adds 1 S from a node of a floating component to ground; no current flows there, so its size does not matter. */
  void tieToGround(int node) {
    double[] re = slots.re[order.slot(0, node)];
    for (int s = 0; s < re.length; s++) {
      re[s] += 1;
    }
  }

  /** Eliminates all nodes; a slot then holds y_i / Y, the share of a node's current that goes to its neighbor. */
  void factor() {
    for (int node : order.nodes()) {
      int[] to = order.slotsTo(node);
      double[] yr = inverse.re[node];
      double[] yi = inverse.im[node];
      for (int slot : to) {
        ComplexKernels.add(yr, yi, slots.re[slot], slots.im[slot]);
      }
      ComplexKernels.invert(yr, yi);
      joinNeighbors(node, to);
    }
  }

  private void joinNeighbors(int node, int[] to) {
    for (int i = 0; i < to.length; i++) {
      int slot = to[i];
      for (int j = 0; j < i; j++) {
        // neighbor j's slot already holds its share y_j / Y
        int target = order.between(node, j, i);
        ComplexKernels.addProduct(slots.re[target], slots.im[target], slots.re[slot], slots.im[slot], slots.re[to[j]],
            slots.im[to[j]]);
      }
      ComplexKernels.multiply(slots.re[slot], slots.im[slot], inverse.re[node], inverse.im[node]);
    }
  }

  /**
   * Solves for the node voltages. Forward: each node passes its current to its neighbors in the shares y_i / Y.
   * Backward: v = (i + Σ y_i v_i) / Y.
   *
   * @param x in: the current into each node, amps; out: its voltage; [node][sample], row 0 is ground
   * @param driven which nodes have a current; the forward pass extends it to every node that receives one
   */
  void solve(ComplexRows x, boolean[] driven) {
    int[] nodes = order.nodes();
    for (int node : nodes) {
      if (driven[node]) {
        forward(node, x, driven);
      }
    }
    for (int step = nodes.length - 1; step >= 0; step--) {
      backward(nodes[step], x);
    }
  }

  private void forward(int node, ComplexRows x, boolean[] driven) {
    int[] neighbors = order.neighbors(node);
    int[] to = order.slotsTo(node);
    for (int i = 0; i < to.length; i++) {
      int other = neighbors[i];
      if (other != 0) {
        driven[other] = true;
        ComplexKernels.addProduct(x.re[other], x.im[other], slots.re[to[i]], slots.im[to[i]], x.re[node], x.im[node]);
      }
    }
  }

  private void backward(int node, ComplexRows x) {
    ComplexKernels.multiply(x.re[node], x.im[node], inverse.re[node], inverse.im[node]);
    int[] neighbors = order.neighbors(node);
    int[] to = order.slotsTo(node);
    for (int i = 0; i < to.length; i++) {
      int other = neighbors[i];
      if (other != 0) {
        ComplexKernels.addProduct(x.re[node], x.im[node], slots.re[to[i]], slots.im[to[i]], x.re[other], x.im[other]);
      }
    }
  }

  /**
   * The impedance between two nodes with all sources off: Z = Σ f² / Y over the nodes, with f the current at a node
   * when it is eliminated and one ampere flows in at a and out at b. Only nodes that f reaches are visited.
   *
   * @param f scratch rows [node][sample]; all zero on entry and on return
   * @param re receives the resistance of each sample, ohms
   * @param im receives the reactance of each sample, ohms
   */
  void impedanceBetween(int a, int b, ComplexRows f, double[] re, double[] im) {
    Arrays.fill(re, 0);
    Arrays.fill(im, 0);
    if (a == b) {
      return;
    }
    boolean[] touched = new boolean[order.nodeCount()];
    inject(a, 1, f, touched);
    inject(b, -1, f, touched);
    int start = Math.min(a == 0 ? Integer.MAX_VALUE : order.turn(a), b == 0 ? Integer.MAX_VALUE : order.turn(b));
    for (int step = start; step < order.nodes().length; step++) {
      int node = order.nodes()[step];
      if (touched[node]) {
        forward(node, f, touched);
        square(f.re[node], f.im[node], inverse.re[node], inverse.im[node], re, im);
      }
    }
  }

  private static void inject(int node, double amps, ComplexRows f, boolean[] touched) {
    if (node != 0) {
      Arrays.fill(f.re[node], amps);
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
    Arrays.fill(fr, 0);
    Arrays.fill(fi, 0);
  }
}
