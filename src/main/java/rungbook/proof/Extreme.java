package rungbook.proof;

/**
 * One reading of one installation.
 *
 * @param shown the farthest that the display can be from the reading to the side that matters, in counts of its last digit
 */
record Extreme(int caseNumber, int sample, double reading, long shown) {}
