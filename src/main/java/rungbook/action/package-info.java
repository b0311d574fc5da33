/**
 * What the actions of a tree mean. {@link rungbook.action.ActionKind} is the table: one row for each action, with what
 * it may be done to and what it changes. Rules, proof, packs and the editor read that table; none of them tells one
 * action from another.
 */
package rungbook.action;
