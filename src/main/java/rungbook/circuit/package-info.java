/**
 * Computes what a meter shows in any state of a control circuit, for the healthy system and every fault, over every
 * sampled installation. {@link rungbook.circuit.Dictionary} is the entry point; {@link rungbook.circuit.Probe} says
 * where the leads are and {@link rungbook.circuit.Reading} what the meter displays. {@code network} builds nodes and
 * branches, {@code solver} solves them, and {@code sequence} follows relays and fuses to a steady state. This package
 * does not depend on trees.
 */
package rungbook.circuit;
