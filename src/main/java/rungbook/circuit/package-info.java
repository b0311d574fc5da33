/**
 * What a meter shows in any state of a control circuit, for the healthy system and every fault, over every sampled
 * installation. {@link rungbook.circuit.Dictionary} is the entry point; {@link rungbook.circuit.Probe} says where the
 * leads
 * are and {@link rungbook.circuit.Reading} what the display shows. Below it, {@code network} builds nodes and branches,
 * {@code solver} solves them and {@code sequence} follows relays and fuses until nothing changes. Knows no trees.
 */
package rungbook.circuit;
