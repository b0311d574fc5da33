/** What holds along paths, held against following each path by itself. */
package rungbook.rules.flow;
