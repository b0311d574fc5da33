/**
 * Texts, the places in them, and the problems found there. Every other package builds on this one; it uses only the
 * JDK.
 */
package rungbook.source;
