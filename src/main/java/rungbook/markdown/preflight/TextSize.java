package rungbook.markdown.preflight;

import java.util.Optional;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.TextLimits;

/** Counts a text's contents line by line, and reports the first line over a limit. */
final class TextSize {

  static final Code TEXT_TOO_LONG = Code.of("text-too-long");

  private final TextLimits limits;
  private final String text;
  private int lines;
  private int headings;
  private int items;
  private int links;
  private int tables;

  TextSize(Source source, TextLimits limits) {
    this.text = source.text();
    this.limits = limits;
  }

  /**
   * @param inner where the line's words start, after quote and list markers
   * @param fenced whether the line is in a fenced block
   */
  Optional<Problem> take(Source source, int start, int inner, int end, boolean fenced) {
    if (inner == end && isBlank(start, end)) {
      return Optional.empty();
    }
    lines++;
    if (fenced) {
      items += commas(inner, end);
    } else {
      count(start, inner, end);
    }
    return past().map(limit -> Problem.at(TEXT_TOO_LONG, source, new Span(start, end)).with("what", limit.what())
        .with("most", limit.most()));
  }

  private void count(int start, int inner, int end) {
    headings += (inner < end && text.charAt(inner) == '#') || isUnderline(start, end) ? 1 : 0;
    items += isItem(start, inner, end) ? 1 : 0;
    tables += isTable(inner, end) ? 1 : 0;
    for (int at = inner; at < end; at++) {
      links += text.charAt(at) == '[' || text.charAt(at) == '<' ? 1 : 0;
    }
  }

  private int commas(int start, int end) {
    int commas = 0;
    for (int at = start; at < end; at++) {
      commas += text.charAt(at) == ',' ? 1 : 0;
    }
    return commas;
  }

  private record Limit(String what, int most) {}

  private Optional<Limit> past() {
    return lines > limits.lines() ? Optional.of(new Limit("lines", limits.lines()))
        : headings > limits.headings() ? Optional.of(new Limit("headings", limits.headings()))
            : items > limits.items() ? Optional.of(new Limit("items of lists", limits.items()))
                : links > limits.links() ? Optional.of(new Limit("links", limits.links()))
                    : tables > limits.tables() ? Optional.of(new Limit("tables", limits.tables())) : Optional.empty();
  }

  /** A bullet; or a number followed by a period or a parenthesis. */
  private boolean isItem(int start, int inner, int end) {
    for (int at = start; at < inner; at++) {
      if ("-+*".indexOf(text.charAt(at)) >= 0) {
        return true;
      }
    }
    int digits = inner;
    while (digits < end && Character.isDigit(text.charAt(digits))) {
      digits++;
    }
    return digits > inner && digits < end && (text.charAt(digits) == '.' || text.charAt(digits) == ')');
  }

  /** The line between a table's head and its rows: {@code |---|:-:|}. */
  private boolean isTable(int inner, int end) {
    boolean hasBar = false;
    for (int at = inner; at < end; at++) {
      if ("|-: \t\r".indexOf(text.charAt(at)) < 0) {
        return false;
      }
      hasBar |= text.charAt(at) == '|';
    }
    return hasBar;
  }

  /** A heading's underline, or a horizontal rule. */
  private boolean isUnderline(int start, int end) {
    char first = text.charAt(start);
    if (first != '=' && first != '-') {
      return false;
    }
    for (int at = start; at < end; at++) {
      if (text.charAt(at) != first && !Character.isWhitespace(text.charAt(at))) {
        return false;
      }
    }
    return true;
  }

  private boolean isBlank(int start, int end) {
    for (int at = start; at < end; at++) {
      if (!Character.isWhitespace(text.charAt(at))) {
        return false;
      }
    }
    return true;
  }
}
