/** Prints problems and proofs as text for a terminal. Knows their wording, not how they were found. */
package rungbook.report;
