/** What a pack shows: its page, the sections of its steps, drawings and digest, as HTML. Pure. */
package rungbook.pack.page;
