package rungbook.markdown;

import java.util.List;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * The extent of the front matter: between a first line of three hyphens and the next such line.
 *
 * @param inner the lines between
 * @param end where the Markdown starts
 */
record FrontMatter(Span inner, int end, List<Problem> problems) {

  static final Code FRONT_MATTER_OPEN = Code.of("front-matter-open");

  private static final String FENCE = "---";

  /** Stops at the closing line: most of a file is not front matter. */
  static FrontMatter cut(Source source) {
    String text = source.text();
    int first = lineEnd(text, 0);
    if (!isFence(text, 0, first)) {
      return new FrontMatter(Span.at(0), 0, List.of());
    }
    int inner = next(text, first);
    for (int line = inner; line < text.length(); line = next(text, lineEnd(text, line))) {
      if (isFence(text, line, lineEnd(text, line))) {
        return new FrontMatter(new Span(inner, line), lineEnd(text, line), List.of());
      }
    }
    return new FrontMatter(Span.at(0), first, List.of(Problem.at(FRONT_MATTER_OPEN, source, new Span(0, first))));
  }

  private static boolean isFence(String text, int start, int end) {
    return text.startsWith(FENCE, start) && end - start >= FENCE.length()
        && text.substring(start + FENCE.length(), end).isBlank();
  }

  private static int lineEnd(String text, int start) {
    int end = start;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return end;
  }

  /** Where the line after one that ends here starts. */
  private static int next(String text, int end) {
    return text.startsWith("\r\n", end) ? end + 2 : Math.min(end + 1, text.length());
  }
}
