/** A tree as records: its steps, answers, meters and quantities. The rules say what a tree means along its paths. */
package rungbook.tree;
