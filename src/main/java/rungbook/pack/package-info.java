/**
 * A tree becomes one self-contained HTML file that works on a phone with no signal, scripts on or off; a library
 * becomes a folder of them with an index. {@link rungbook.pack.Pack} is the way in. Everything here is a pure function:
 * no network, no clock, no database, the same bytes for the same input.
 */
package rungbook.pack;
