/**
 * From a control system to the readings of a meter.
 *
 * <p>{@link rungbook.circuit.Netlist} and {@link rungbook.circuit.Solver} are AC steady state by
 * modified nodal analysis, for any circuit. {@link rungbook.circuit.Wiring} turns a system into such
 * circuits, {@link rungbook.circuit.Logic} says how its relays, boards and fuses move from one to the
 * next, and {@link rungbook.circuit.Dictionary} does both for every fault and every tolerance sample
 * at once. Knows no trees.
 */
package rungbook.circuit;
