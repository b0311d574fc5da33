/**
 * Turns a parsed document into a {@link rungbook.tree.Tree}: includes fragments, resolves links, reads steps and
 * answers.
 */
package rungbook.tree.reader;
