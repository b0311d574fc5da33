package rungbook.markdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * Invisible characters that change how a text reads: directional marks (they can make {@code 42 minutes} display as
 * {@code 24 minutes}; Unicode Technical Report 36, section 2), zero-width characters, and control characters. Reports
 * each run of them once.
 */
final class HiddenCharacters {

  static final Code HIDDEN_CHARACTER = Code.of("hidden-character");

  private static final char ZERO_WIDTH_NON_JOINER = '\u200C';
  private static final char ZERO_WIDTH_JOINER = '\u200D';

  private HiddenCharacters() {}

  static List<Problem> in(Source source) {
    var problems = new ArrayList<Problem>(0);
    String text = source.text();
    for (int at = 0; at < text.length(); at++) {
      if (isHidden(text, at)) {
        int start = at;
        while (at + 1 < text.length() && isHidden(text, at + 1)) {
          at++;
        }
        problems.add(problem(source, start, at + 1));
      }
    }
    return problems;
  }

  private static Problem problem(Source source, int start, int end) {
    int character = source.text().charAt(start);
    String hex = Integer.toHexString(character).toUpperCase(Locale.ROOT);
    String name = Character.getName(character);
    return Problem.at(HIDDEN_CHARACTER, source, new Span(start, end))
        .with("character", "U+" + "0".repeat(4 - hex.length()) + hex)
        .with("name", name == null ? "no name" : name.toLowerCase(Locale.ROOT));
  }

  private static boolean isHidden(String text, int at) {
    char c = text.charAt(at);
    if (c < '\u007F') {
      return c < ' ' && c != '\t' && c != '\n' && c != '\r';
    }
    if (c < '\u200B') {
      return c <= '\u009F';
    }
    return isDirection(c) || isWidthless(c)
        || ((c == ZERO_WIDTH_JOINER || c == ZERO_WIDTH_NON_JOINER) && !joins(text, at));
  }

  private static boolean isDirection(char c) {
    return c == '\u200E' || c == '\u200F' || (c >= '\u202A' && c <= '\u202E') || (c >= '\u2066' && c <= '\u2069');
  }

  private static boolean isWidthless(char c) {
    return c == '\u200B' || (c >= '\u2060' && c <= '\u2064') || c == '\uFEFF';
  }

  /** Persian and the scripts of India need joiners between letters, and so do some emoji. */
  private static boolean joins(String text, int at) {
    return at > 0 && at + 1 < text.length() && text.charAt(at - 1) >= '\u0590' && (text.charAt(at + 1) >= '\u0590');
  }
}
