package rungbook.markdown;

import rungbook.source.Span;

/**
 * A way on as written: {@code - answer: [label](target)}.
 *
 * @param span the item's line, without its bullet
 */
public record ParsedWay(String answer, Span answerSpan, String label, String target, Span targetSpan, Span span) {}
