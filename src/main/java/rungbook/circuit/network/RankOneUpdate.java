package rungbook.circuit.network;

/** A change of the admittance between two nodes, for every sample: of rank one. */
public record RankOneUpdate(int a, int b, double[] re, double[] im) {}
