package rungbook.circuit.solver;

import java.util.BitSet;
import rungbook.circuit.network.ComplexRows;

/**
 * A network eliminated node by node, for every sample of a block at once. Rows are [slot][sample] or [node][sample]; a
 * row that is null is zero in every sample, and costs nothing.
 *
 * <p>Star-mesh transformation: with Y the sum of a node's admittances, y_i y_j / Y is added between its neighbors i and
 * j. Diagonals are never formed, so a leakage of nanosiemens next to a contact of fifty siemens is not lost to
 * rounding, as it would be in an LU factorization of the node matrix. Stray voltages depend on that leakage.
 *
 * <p>Each slot is gathered from the branches on it and from the nodes eliminated before, always in the same order. So
 * after a change only the paths from the changed nodes to the root are eliminated again, and every number is the same
 * to the last bit as if the whole network had been.
 */
final class FactorizedNetwork {

  private final EliminationOrder order;
  private final BitSet dirty = new BitSet();

  /** What the branches on a slot add up to, siemens. */
  private final SummedRows own;

  /** The same with what elimination adds, siemens. */
  private final SummedRows siemens;

  /** y_i / Y of a slot: the share of a node's current that goes to its neighbor. */
  private final SummedRows share;

  /** 1 / Y of a node, ohms. */
  private final SummedRows inverse;

  /** The current of the sources into a node, amps. */
  private final SummedRows source;

  /** The same with what earlier nodes pass on, amps. */
  private final SummedRows flow;

  private final SummedRows volts;

  FactorizedNetwork(EliminationOrder order, int samples) {
    this.order = order;
    own = new SummedRows(order.slotCount(), samples);
    siemens = new SummedRows(order.slotCount(), samples);
    share = new SummedRows(order.slotCount(), samples);
    inverse = new SummedRows(order.nodeCount(), samples);
    source = new SummedRows(order.nodeCount(), samples);
    flow = new SummedRows(order.nodeCount(), samples);
    volts = new SummedRows(order.nodeCount(), samples);
    volts.set(0, new double[samples], new double[samples]);
  }

  EliminationOrder order() {
    return order;
  }

  /** Becomes the same network as another; later changes of this one do not change the other. */
  void become(FactorizedNetwork other) {
    own.become(other.own);
    siemens.become(other.siemens);
    share.become(other.share);
    inverse.become(other.inverse);
    source.become(other.source);
    flow.become(other.flow);
  }

  /** The admittances of the branches between two nodes, to be cleared and added again. */
  SummedRows changeBetween(int a, int b) {
    dirty.set(Math.min(order.turn(a), order.turn(b)));
    return own;
  }

  /** The currents of the sources, to be cleared and added again at a node. */
  SummedRows changeSource(int node) {
    dirty.set(order.turn(node));
    return source;
  }

  /** Eliminates the changed nodes and all on their paths to the root. */
  void factor() {
    for (int step = dirty.nextSetBit(0); step >= 0; step = dirty.nextSetBit(step + 1)) {
      int node = order.nodes()[step];
      eliminate(node);
      if (order.parent(node) != 0) {
        dirty.set(order.turn(order.parent(node)));
      }
    }
    dirty.clear();
  }

  private void eliminate(int node) {
    int[] to = order.slotsTo(node);
    inverse.clear(node);
    for (int slot : to) {
      gather(slot);
      if (siemens.has(slot)) {
        inverse.add(node, siemens.rows().re[slot], siemens.rows().im[slot]);
      }
    }
    inverse.invert(node);
    int[] neighbors = order.neighbors(node);
    for (int i = 0; i < to.length; i++) {
      share.clear(to[i]);
      if (neighbors[i] != 0 && siemens.has(to[i])) {
        multiply(share, to[i], siemens, to[i], inverse, node);
      }
    }
    receive(node);
  }

  private void gather(int slot) {
    siemens.clear(slot);
    if (own.has(slot)) {
      siemens.set(slot, own.rows().re[slot], own.rows().im[slot]);
    }
    int[] terms = order.terms(slot);
    for (int i = 0; i < terms.length; i += 2) {
      if (siemens.has(terms[i]) && share.has(terms[i + 1])) {
        multiply(siemens, slot, siemens, terms[i], share, terms[i + 1]);
      }
    }
  }

  private void receive(int node) {
    flow.clear(node);
    if (source.has(node)) {
      flow.set(node, source.rows().re[node], source.rows().im[node]);
    }
    int[] givers = order.givers(node);
    for (int i = 0; i < givers.length; i += 2) {
      if (flow.has(givers[i]) && share.has(givers[i + 1])) {
        multiply(flow, node, flow, givers[i], share, givers[i + 1]);
      }
    }
  }

  /** Adds the product of two rows to a row of a sum. */
  private static void multiply(SummedRows sum, int row, SummedRows a, int i, SummedRows b, int j) {
    sum.addProduct(row, a.rows().re[i], a.rows().im[i], b.rows().re[j], b.rows().im[j]);
  }

  /**
   * The voltage of some nodes: v = (i + Σ y_j v_j) / Y, from the root down.
   *
   * @param backward as {@link EliminationOrder#backward} gives them
   */
  ComplexRows volts(int[] backward) {
    for (int node : backward) {
      volts.clear(node);
      if (flow.has(node)) {
        multiply(volts, node, flow, node, inverse, node);
      }
      int[] neighbors = order.neighbors(node);
      int[] to = order.slotsTo(node);
      for (int i = 0; i < to.length; i++) {
        if (neighbors[i] != 0 && share.has(to[i]) && volts.has(neighbors[i])) {
          multiply(volts, node, share, to[i], volts, neighbors[i]);
        }
      }
      if (!volts.has(node)) {
        volts.set(node, volts.rows().re[0], volts.rows().im[0]);
      }
    }
    return volts.rows();
  }

  /** The share of a node's current that goes through a slot; null if none does. */
  ComplexRows shares() {
    return share.rows();
  }

  /** 1 / Y of each node, ohms. */
  ComplexRows inverses() {
    return inverse.rows();
  }
}
