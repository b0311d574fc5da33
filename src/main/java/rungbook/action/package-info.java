/**
 * The meaning of a tree's actions. {@link rungbook.action.ActionKind} is the table: one row per action, with its
 * possible objects and what it changes. Rules, proof, packs and the editor read this table; none of them has a switch
 * over actions.
 */
package rungbook.action;
