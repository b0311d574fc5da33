/** Tests of books. */
package rungbook.pack.book;
