/** The pocket cards of a library's systems. */
package rungbook.library.card;
