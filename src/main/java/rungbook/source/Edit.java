package rungbook.source;

/** What is at a place in a text is to be replaced; an empty span is a place to insert at. */
public record Edit(Source source, Span span, String replacement) {}
