package rungbook.pack.style;

/** Styles without what only their readers need. */
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
}
