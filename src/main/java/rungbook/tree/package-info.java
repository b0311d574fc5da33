/**
 * A document becomes a tree: names are looked up, answers are read, fragments are taken in. Records only; what the tree
 * means along its paths is for the rules.
 */
package rungbook.tree;
