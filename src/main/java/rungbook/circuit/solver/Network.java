package rungbook.circuit.solver;

import rungbook.circuit.network.ComplexRows;

/** A solved network: the voltage of every node and the impedance between any two, for every sample. */
public interface Network {

  /** Node voltages, [node][sample], volts rms; in a floating component only differences are meaningful. */
  ComplexRows volts();

  /** Whether two nodes are in the same component. */
  boolean connected(int a, int b);

  /**
   * Computes the impedance between two nodes with all sources off.
   *
   * @param re receives the resistance of each sample, ohms
   * @param im receives the reactance of each sample, ohms
   */
  void impedanceBetween(int a, int b, double[] re, double[] im);

  /** Returns its rows to the pool; the network must not be used afterward. */
  void release();
}
