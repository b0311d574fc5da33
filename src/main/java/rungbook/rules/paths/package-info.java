/** Rules about what a path already knows: checks whose answer an earlier one, in the same state, has given away. */
package rungbook.rules.paths;
