/** Trees as one EPUB 3 book, for phones whose reader opens books but not pages. Pure. */
package rungbook.pack.book;
