package rungbook.circuit.solver;

import rungbook.circuit.network.ComplexRows;

/** The admittances of the branches, [branch][sample], by mode: 1 released or closed, 2 on. */
interface Admittances {
  ComplexRows of(byte mode);
}
