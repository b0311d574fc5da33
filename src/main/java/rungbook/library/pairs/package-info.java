/** Follows every pair of faults through the trees of a library, on demand. */
package rungbook.library.pairs;
