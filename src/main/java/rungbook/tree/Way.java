package rungbook.tree;

import rungbook.source.Span;

/**
 * A way on.
 *
 * @param written the answer as written
 * @param answerSpan where the answer is, in the step's source
 */
public record Way(Answer answer, String written, Span answerSpan, Target target, String label, Span span) {}
