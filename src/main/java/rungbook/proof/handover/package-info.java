/** Follows what a tree hands on through the trees that take over, to the ends or back in a circle. */
package rungbook.proof.handover;
