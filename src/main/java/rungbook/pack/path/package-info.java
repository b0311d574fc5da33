/** What holds on the paths to a step of a tree, as its page shows it. */
package rungbook.pack.path;
