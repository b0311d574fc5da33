/**
 * Solves AC and DC networks for all samples at once: star-mesh elimination
 * ({@link rungbook.circuit.solver.FactorizedNetwork}) and low-rank updates of a solved network
 * ({@link rungbook.circuit.solver.LowRankNetwork}).
 */
package rungbook.circuit.solver;
