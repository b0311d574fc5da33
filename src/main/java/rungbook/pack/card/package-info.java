/** A system's pocket card: expected readings, what runs, and the ladder, on a sheet to fold. */
package rungbook.pack.card;
