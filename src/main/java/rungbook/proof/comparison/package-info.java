/** How the proof of a tree differs from that of an earlier text of it: which faults end elsewhere than before. */
package rungbook.proof.comparison;
