package rungbook.circuit;

/** A change of the admittance between two nodes, for every sample: of rank one. */
record Update(int a, int b, double[] re, double[] im) {}
