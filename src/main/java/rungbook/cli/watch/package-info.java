/** Waits for saves in folders. */
package rungbook.cli.watch;
