package rungbook.circuit.network;

/**
 * An admittance between two nodes.
 *
 * @param re conductance of each sample, siemens
 * @param im susceptance of each sample, siemens
 */
public record BranchAdmittance(int a, int b, double[] re, double[] im) {}
