/** Packs, looked at as text and in a real browser. */
package rungbook.pack;
