/**
 * The logic of a system: contacts are open or closed, loads are on or off. It says which loads are called on
 * and which points are live in a healthy system, without solving the circuit; sources have their nominal voltage, and
 * whatever conducts has no resistance. {@code rungbook.circuit} computes voltages.
 */
package rungbook.system.logic;
