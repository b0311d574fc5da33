/**
 * Solves AC and DC networks for all samples of a block at once by star-mesh elimination.
 * {@link rungbook.circuit.solver.NetworkSolver} goes from one network to the next and eliminates again only what has
 * changed.
 */
package rungbook.circuit.solver;
