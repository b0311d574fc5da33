/**
 * Problems and proofs as people and programs read them: text for a terminal, JSON, and SARIF 2.1.0. Knows their
 * wording, not how they were found.
 */
package rungbook.report;
