/** A reading on demand in words, as text for a terminal, and as JSON. */
package rungbook.report.demand;
