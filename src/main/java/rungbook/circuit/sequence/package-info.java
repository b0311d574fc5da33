/**
 * The sequence of operation: which contacts move, which fuses open, and where the circuit settles.
 * {@link rungbook.circuit.sequence.RelayLogic} takes one step; {@link rungbook.circuit.sequence.SteadyStateSearch}
 * repeats it
 * until nothing changes.
 */
package rungbook.circuit.sequence;
