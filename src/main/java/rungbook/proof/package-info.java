/**
 * A tree is walked by the healthy system and by every fault of it, on every sample, and its findings are compared with the
 * truth. {@link rungbook.proof.Proving} is the whole story; what it finds is a {@link rungbook.proof.Proof}. Pure: where the
 * readings come from is behind {@link rungbook.proof.Installations}.
 */
package rungbook.proof;
