/** Text, the places in it, and the problems found there. Everything else builds on this room; it uses only the JDK. */
package rungbook.source;
