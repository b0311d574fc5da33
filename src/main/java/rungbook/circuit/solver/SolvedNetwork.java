package rungbook.circuit.solver;

import rungbook.circuit.network.ComplexRows;

/**
 * A solved network: the voltages of nodes and the impedance between any two, for every sample of a block. Valid until
 * its solver solves the next one.
 */
public final class SolvedNetwork {

  private final ComplexRows volts;
  private final UnitCurrents currents;
  private final ConnectedComponents components;

  SolvedNetwork(ComplexRows volts, UnitCurrents currents, ConnectedComponents components) {
    this.volts = volts;
    this.currents = currents;
    this.components = components;
  }

  /**
   * Voltages of the nodes that the solver was asked for, [node][sample], volts rms; in a floating component only
   * differences are meaningful.
   */
  public ComplexRows volts() {
    return volts;
  }

  /** Whether two nodes are in the same component. */
  public boolean connected(int a, int b) {
    return components.connected(a, b);
  }

  /**
   * Computes the impedance between two nodes with all sources off.
   *
   * @param re receives the resistance of each sample, ohms
   * @param im receives the reactance of each sample, ohms
   */
  public void impedanceBetween(int a, int b, double[] re, double[] im) {
    currents.impedanceBetween(a, b, re, im);
  }
}
