package rungbook.markdown.preflight;

import java.util.Optional;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.TextLimits;

/**
 * Rejects text that no technician writes and that makes Markdown parsers slow or recurse deeply: very long lines and
 * paragraphs, deep nesting, thousands of brackets in one paragraph, tens of thousands of lines. Makes one pass over the
 * text.
 */
public final class Preflight {

  static final Code NESTED_TOO_DEEP = Code.of("nested-too-deep");
  static final Code PARAGRAPH_TOO_LONG = Code.of("paragraph-too-long");

  /** In UTF-16 units. */
  private static final int LONGEST_PARAGRAPH = 20_000;

  private static final int MOST_MARKS = 1_000;
  private static final int DEEPEST = 32;
  private static final int WIDEST_INDENT = 4 * DEEPEST;
  private static final boolean[] IS_MARK = new boolean[128];

  static {
    "[]*_`<!\\&".chars().forEach(mark -> IS_MARK[mark] = true);
  }

  private final Source source;
  private final String text;
  private final TextSize size;
  private final OpenFence fence = new OpenFence();
  private int paragraphStart;
  private int marks;

  private Preflight(Source source, TextLimits limits) {
    this.source = source;
    this.size = new TextSize(source, limits);
    this.text = source.text();
  }

  /** The first reason to reject the text, if there is one. */
  public static Optional<Problem> inspect(Source source, TextLimits limits) {
    return new Preflight(source, limits).inspect();
  }

  private Optional<Problem> inspect() {
    int start = 0;
    while (start < text.length()) {
      int end = lineEnd(start);
      Optional<Problem> problem = inspectLine(start, end);
      if (problem.isPresent()) {
        return problem;
      }
      start = end + 1;
    }
    return Optional.empty();
  }

  private int lineEnd(int start) {
    int end = text.indexOf('\n', start);
    return end < 0 ? text.length() : end;
  }

  private Optional<Problem> inspectLine(int start, int end) {
    int inner = start;
    int depth = 0;
    int indent = 0;
    while (inner < end && isOpener(text.charAt(inner))) {
      if (text.charAt(inner) == ' ' || text.charAt(inner) == '\t') {
        indent++;
      } else {
        depth++;
      }
      inner++;
    }
    if (inner == end && depth > 2 && depth == end - start) {
      depth = 0; // a rule across the page or the line under a heading
    }
    if (depth > DEEPEST || indent > WIDEST_INDENT) {
      return Optional.of(Problem.at(NESTED_TOO_DEEP, source, new Span(start, inner)).with("most", DEEPEST));
    }
    if (inner == end || isListed(start, inner) || fence.holds(text, start, inner, end)) {
      paragraphStart = start;
      marks = 0;
    }
    Optional<Problem> tooLong = size.take(source, start, inner, end, fence.isOpen());
    return tooLong.isPresent() || fence.isOpen() ? tooLong : inspectParagraph(inner, end);
  }

  /** A list marker starts a new paragraph; a quote marker may continue one. */
  private boolean isListed(int start, int inner) {
    for (int i = start; i < inner; i++) {
      char c = text.charAt(i);
      if (c == '-' || c == '+' || c == '*') {
        return true;
      }
    }
    return false;
  }

  private Optional<Problem> inspectParagraph(int start, int end) {
    for (int i = start; i < end; i++) {
      char c = text.charAt(i);
      if (c < IS_MARK.length && IS_MARK[c]) {
        marks++;
      }
    }
    if (end - paragraphStart > LONGEST_PARAGRAPH || marks > MOST_MARKS) {
      return Optional.of(Problem.at(PARAGRAPH_TOO_LONG, source, new Span(paragraphStart, end))
          .with("most", LONGEST_PARAGRAPH).with("marks", MOST_MARKS));
    }
    return Optional.empty();
  }

  /** Characters that open a quote or a list, or indent one. */
  private static boolean isOpener(char c) {
    return c == '>' || c == '-' || c == '+' || c == '*' || c == ' ' || c == '\t' || c == '\r';
  }
}
