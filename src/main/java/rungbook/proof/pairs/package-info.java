/** Follows every pair of faults of a system through its trees, and finds which fault masks which. */
package rungbook.proof.pairs;
