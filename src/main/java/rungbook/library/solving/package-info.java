/** The systems of a library made ready to be solved, and what is asked of them: readings, voltages and proofs. */
package rungbook.library.solving;
