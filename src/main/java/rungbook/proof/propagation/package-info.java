/** Carries every fault case and sample through a tree at once, and finds the path of one of them as a witness. */
package rungbook.proof.propagation;
