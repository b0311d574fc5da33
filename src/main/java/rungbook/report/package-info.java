/**
 * Prints problems and proofs as text for a terminal, as JSON, and as SARIF 2.1.0. Knows their wording, not how they
 * were found.
 */
package rungbook.report;
