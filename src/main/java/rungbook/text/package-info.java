/**
 * Small pure functions on text that every room may use, each in one place: escaping, addresses, digests, counted words,
 * days, words to search for.
 */
package rungbook.text;
