/** What a pack shows: its page, the sections of its steps, drawings, styles and digest, as HTML. Pure. */
package rungbook.pack.page;
