/**
 * From a control system to the readings of a meter.
 *
 * <p>{@link rungbook.circuit.Wiring} turns a system into nodes and branches, {@link rungbook.circuit.Factored} solves the AC
 * steady state of one relay state for all samples, {@link rungbook.circuit.Logic} says how relays, boards and fuses move from
 * one state to the next, and {@link rungbook.circuit.Dictionary} does this for every fault. Knows no trees. How readings lie in
 * memory and which formula each class computes is in {@code docs/circuit-internals.md}.
 */
package rungbook.circuit;
