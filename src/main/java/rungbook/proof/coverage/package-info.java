/** What the trees of a library find together: for each system, every complaint with every fault. */
package rungbook.proof.coverage;
