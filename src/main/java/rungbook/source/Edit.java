package rungbook.source;

/** Replaces a span of a text; with an empty span, inserts at that place. */
public record Edit(Source source, Span span, String replacement) {}
