/** What to do about a tree that was proved, in the order of what can mislead most, and the state that it is in. */
package rungbook.proof.advice;
