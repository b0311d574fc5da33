/** Rules about what is already known on a path: checks whose answer follows from an earlier check in the same state. */
package rungbook.rules.paths;
