/**
 * Trees as one HTML file: a list with search, then each tree, with hand-overs as links within the file. For phones on
 * which a page cannot lead to the file beside it. Pure.
 */
package rungbook.pack.onefile;
