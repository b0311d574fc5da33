/**
 * Problems, proofs and coverage as JSON, under the schema that {@code docs/json-report.md} describes, and problems as
 * SARIF 2.1.0.
 */
package rungbook.report.json;
