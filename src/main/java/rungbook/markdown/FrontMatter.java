package rungbook.markdown;

import java.util.List;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * Where the front matter stands: between a first line of three hyphens and the next such line.
 *
 * @param inner the lines between
 * @param end where the Markdown begins
 */
record FrontMatter(Span inner, int end, List<Problem> problems) {

  private static final String FENCE = "---";

  static FrontMatter cut(Source source) {
    if (!isFence(source, 1)) {
      return new FrontMatter(Span.at(0), 0, List.of());
    }
    for (int line = 2; line <= source.lineCount(); line++) {
      if (isFence(source, line)) {
        return new FrontMatter(new Span(lineStart(source, 2), lineStart(source, line)), source.lineSpan(line).end(), List.of());
      }
    }
    var open = Problem.at("front-matter-open", source, source.lineSpan(1));
    return new FrontMatter(Span.at(0), source.lineSpan(1).end(), List.of(open));
  }

  private static boolean isFence(Source source, int line) {
    return source.text(source.lineSpan(line)).stripTrailing().equals(FENCE);
  }

  private static int lineStart(Source source, int line) {
    return source.lineSpan(line).start();
  }
}
