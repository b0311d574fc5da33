package rungbook.circuit.solver;

import rungbook.circuit.network.ComplexRows;

/** The admittances of the links by how each stands: 1 at rest or closed, 2 on. */
interface Admittances {
  ComplexRows of(byte mode);
}
