package rungbook.circuit.solver;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import rungbook.circuit.network.ComplexKernels;
import rungbook.circuit.network.ComplexRows;

/**
 * One ampere into a node, as it passes on through a factorized network: the current at each node of the path to the
 * root when that node is eliminated. Two such paths give the impedance between their nodes, Z = Σ (f_a − f_b)² / Y.
 */
final class UnitCurrents {

  private final FactorizedNetwork network;
  private final EliminationOrder order;
  private final int samples;
  private final double[] one;
  private final double[] zero;
  private final double[] differenceRe;
  private final double[] differenceIm;
  private final Map<Integer, SummedRows> byNode = new HashMap<>();
  private final BitSet known = new BitSet();

  UnitCurrents(FactorizedNetwork network, int samples) {
    this.network = network;
    this.order = network.order();
    this.samples = samples;
    one = new double[samples];
    zero = new double[samples];
    differenceRe = new double[samples];
    differenceIm = new double[samples];
    Arrays.fill(one, 1);
  }

  /** Forgets all currents, since the network has changed. */
  void clear() {
    known.clear();
  }

  /**
   * Computes the impedance between two nodes with all sources off. Only nodes that a current reaches are visited.
   *
   * @param re receives the resistance of each sample, ohms
   * @param im receives the reactance of each sample, ohms
   */
  void impedanceBetween(int a, int b, double[] re, double[] im) {
    Arrays.fill(re, 0);
    Arrays.fill(im, 0);
    if (a == b) {
      return;
    }
    ComplexRows f = from(a == 0 ? b : a);
    ComplexRows g = from(b == 0 ? a : b);
    int first = a;
    int second = b;
    while (first != second) {
      int node = order.turn(first) < order.turn(second) ? first : second;
      addLoss(node, f, g, re, im);
      first = first == node ? order.parent(node) : first;
      second = second == node ? order.parent(node) : second;
    }
    for (int node = first; node != 0; node = order.parent(node)) {
      addLoss(node, f, g, re, im);
    }
  }

  private void addLoss(int node, ComplexRows f, ComplexRows g, double[] re, double[] im) {
    ComplexRows inverse = network.inverses();
    boolean isInF = f.re[node] != null;
    if (isInF && f != g && g.re[node] != null) {
      ComplexKernels.difference(differenceRe, differenceIm, f.re[node], f.im[node], g.re[node], g.im[node]);
      ComplexKernels.addSquare(re, im, differenceRe, differenceIm, inverse.re[node], inverse.im[node]);
    } else if (isInF || g.re[node] != null) {
      ComplexRows only = isInF ? f : g;
      ComplexKernels.addSquare(re, im, only.re[node], only.im[node], inverse.re[node], inverse.im[node]);
    }
  }

  private ComplexRows from(int start) {
    SummedRows currents = byNode.computeIfAbsent(start, node -> new SummedRows(order.nodeCount(), samples));
    if (!known.get(start)) {
      known.set(start);
      for (int node = start; node != 0; node = order.parent(node)) {
        currents.clear(node);
      }
      currents.set(start, one, zero);
      passOn(start, currents);
    }
    return currents.rows();
  }

  /** A neighbor gets its share; of the first node's single ampere, that is the share itself. */
  private void passOn(int start, SummedRows currents) {
    ComplexRows share = network.shares();
    for (int node = start; node != 0; node = order.parent(node)) {
      int[] neighbors = order.neighbors(node);
      int[] to = order.slotsTo(node);
      for (int i = 0; currents.has(node) && i < to.length; i++) {
        if (neighbors[i] == 0 || share.re[to[i]] == null) {
          continue;
        }
        if (node == start) {
          currents.add(neighbors[i], share.re[to[i]], share.im[to[i]]);
        } else {
          currents.addProduct(neighbors[i], share.re[to[i]], share.im[to[i]], currents.rows().re[node],
              currents.rows().im[node]);
        }
      }
    }
  }
}
