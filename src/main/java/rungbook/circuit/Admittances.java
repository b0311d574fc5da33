package rungbook.circuit;

/** The admittances of the links by how each stands: 1 at rest or closed, 2 on. */
interface Admittances {
  Rows of(byte mode);
}
