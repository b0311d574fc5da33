package rungbook.proof.accounting;

/**
 * One reading of one installation.
 *
 * @param shown the farthest that the display can be from the reading to the side that matters, in counts of its last
 * digit
 */
public record Extreme(int caseNumber, int sample, double reading, long shown) {}
