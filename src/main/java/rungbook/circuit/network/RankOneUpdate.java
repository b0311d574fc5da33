package rungbook.circuit.network;

/**
 * An admittance to add between two nodes: a change of rank one in the node matrix.
 *
 * @param re conductance of each sample, siemens
 * @param im susceptance of each sample, siemens
 */
public record RankOneUpdate(int a, int b, double[] re, double[] im) {}
