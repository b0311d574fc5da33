/**
 * Proves a tree on a simulated circuit: every fault is injected, the tree is followed, and its findings are compared
 * with the truth. {@link rungbook.proof.Proving} runs the stages in order: {@code plan}, {@code propagation},
 * {@code accounting}, {@code report} and {@code rules}. Pure: readings come through
 * {@link rungbook.proof.plan.Installations}.
 */
package rungbook.proof;
