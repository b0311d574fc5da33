package rungbook.markdown;

import rungbook.source.Span;

/**
 * A picture in the text.
 *
 * @param target the address as written
 * @param alternative the alternative text
 */
public record Picture(String target, String alternative, Span span) {}
