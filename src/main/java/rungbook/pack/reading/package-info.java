/** What a reading that a person types into a pack means. Pure. */
package rungbook.pack.reading;
