/**
 * Turns a parsed document into a {@link rungbook.tree.Tree}: fragments put in, links resolved, steps and answers read.
 */
package rungbook.tree.reader;
