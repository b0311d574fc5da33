/** What a proof can show to be wrong with a tree. One rule a class; none reads or writes anything. */
package rungbook.proof.rules;
