/**
 * The sequence of operation: which contacts move, which fuses blow, and the steady state.
 * {@link rungbook.circuit.sequence.RelayLogic} computes one step; {@link rungbook.circuit.sequence.SteadyStateSearch}
 * repeats it until nothing changes.
 */
package rungbook.circuit.sequence;
