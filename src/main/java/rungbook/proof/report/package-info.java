/** What a proof found, as data: {@link rungbook.proof.report.Proof}, its limits, and the edit that moves a limit. */
package rungbook.proof.report;
