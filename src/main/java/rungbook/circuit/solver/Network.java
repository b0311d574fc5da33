package rungbook.circuit.solver;

import rungbook.circuit.network.ComplexRows;

/** A network ready to be read: every node's voltage, and the impedance seen from any two nodes, for every sample. */
public interface Network {

  /** Node voltages, rms; within a floating group only differences mean anything. */
  ComplexRows volts();

  /** Whether something ties two nodes together. */
  boolean together(int a, int b);

  /** The impedance between two nodes with every source at rest, ohms. */
  void seenFrom(int a, int b, double[] re, double[] im);

  /** Gives its memory back; it is not to be read any more. */
  void release();
}
