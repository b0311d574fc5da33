package rungbook.pack.style;

import java.util.List;

/** Style and scripts without what only their readers need. */
final class Minified {

  /** Beside these no space counts in a style; a plus and a minus keep theirs. */
  private static final String CLOSE = "{};,>";

  private Minified() {}

  /** A style without comments, and without white space that means nothing. Strings stay as they are. */
  static String style(String css) {
    var out = new StringBuilder(css.length());
    for (int i = 0; i < css.length();) {
      char c = css.charAt(i);
      int end = c == '"' || c == '\'' ? endOfString(css, i) : css.startsWith("/*", i) ? endOfComment(css, i) : i + 1;
      if (c == '"' || c == '\'') {
        out.append(css, i, end);
      } else if (Character.isWhitespace(c)) {
        space(out);
      } else if (end == i + 1) {
        append(out, c);
      }
      i = end;
    }
    return out.toString().strip();
  }

  private static void space(StringBuilder out) {
    char last = out.isEmpty() ? '{' : out.charAt(out.length() - 1);
    if (last != ' ' && last != ':' && last != '(' && CLOSE.indexOf(last) < 0) {
      out.append(' ');
    }
  }

  private static void append(StringBuilder out, char c) {
    int last = out.length() - 1;
    if (last >= 0 && out.charAt(last) == ' ' && (CLOSE.indexOf(c) >= 0 || c == ')' || c == '!')) {
      out.setLength(last--);
    }
    if (c == '}' && last >= 0 && out.charAt(last) == ';') {
      out.setLength(last);
    }
    out.append(c);
  }

  private static int endOfString(String css, int start) {
    int end = start + 1;
    while (css.charAt(end) != css.charAt(start)) {
      end += css.charAt(end) == '\\' ? 2 : 1;
    }
    return end + 1;
  }

  private static int endOfComment(String css, int start) {
    return css.indexOf("*/", start + 2) + 2;
  }

  /**
   * A script without comments and white space. Line ends stay where they can end a statement.
   *
   * @throws IllegalArgumentException for what is not told apart here: a text or a comment over several lines
   */
  static String script(String js) {
    return written(Token.of(js));
  }

  /**
   * The same with shorter names and functions. The script is a function of its own.
   *
   * @throws IllegalArgumentException for what is not told apart here
   */
  static String function(String js) {
    return written(Shorter.of(Arrows.of(ShortNames.of(Token.of(js)))));
  }

  private static String written(List<Token> tokens) {
    var out = new StringBuilder();
    Token last = null;
    for (Token token : tokens) {
      if (last != null) {
        out.append(between(last, token));
      }
      out.append(token.text());
      last = token;
    }
    return out.toString();
  }

  private static String between(Token last, Token next) {
    if (next.newLine() && canEnd(last) && canBegin(next)) {
      return "\n";
    }
    boolean bothWords = last.kind() == Token.Kind.WORD && next.kind() == Token.Kind.WORD;
    boolean bothSigns = (next.text().startsWith(last.text()) && (last.is("+") || last.is("-")))
        || (last.text().length() == 2 && last.text().endsWith(next.text()));
    return bothWords || bothSigns ? " " : "";
  }

  private static boolean canEnd(Token token) {
    return token.kind() != Token.Kind.SIGN || ")]}".contains(token.text()) || token.text().length() == 2;
  }

  private static boolean canBegin(Token token) {
    return token.kind() != Token.Kind.SIGN || "([{".contains(token.text()) || token.text().length() == 2;
  }
}
