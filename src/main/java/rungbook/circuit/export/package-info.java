/**
 * A system's circuit as numbers, for a solver outside of this program: that of a practice page.
 */
package rungbook.circuit.export;
