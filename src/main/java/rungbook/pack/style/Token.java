package rungbook.pack.style;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A token of a script.
 *
 * @param newLine whether a line ends before it, which can end a statement
 */
record Token(Kind kind, String text, boolean newLine) {

  enum Kind { WORD, STRING, REGEX, SIGN }

  private static final Pattern SPACE = Pattern.compile("(?:\\s|//[^\\n]*|/\\*[^\\n]*?\\*/)*");
  private static final Pattern STRING = Pattern.compile("'(?:\\\\.|[^'\\\\\\n])*'|\"(?:\\\\.|[^\"\\\\\\n])*\"");
  private static final Pattern REGEX = Pattern
      .compile("/(?:\\\\.|\\[(?:\\\\.|[^\\]\\\\\\n])*\\]|[^/\\\\\\[\\n])+/[a-z]*");
  private static final Pattern WORD = Pattern.compile("[\\w$.]*[\\w$]");
  private static final Pattern NAME = Pattern.compile("[A-Za-z_$][\\w$]*");

  /** After these words a slash begins a regular expression. */
  private static final Set<String> BEFORE_REGEX = Set.of("return", "typeof", "case", "in", "of");

  boolean isName() {
    return kind == Kind.WORD && NAME.matcher(text).matches();
  }

  boolean is(String other) {
    return kind != Kind.STRING && text.equals(other);
  }

  /** @throws IllegalArgumentException for what is not told apart here: a text over several lines */
  static List<Token> of(String js) {
    var tokens = new ArrayList<Token>();
    for (int at = 0;;) {
      int end = end(SPACE, js, at);
      boolean newLine = js.substring(at, end).contains("\n");
      if (end == js.length()) {
        return tokens;
      }
      Token token = next(js, end, newLine, tokens);
      tokens.add(token);
      at = end + token.text().length();
    }
  }

  private static Token next(String js, int at, boolean newLine, List<Token> before) {
    char c = js.charAt(at);
    if (c == '`' || c == '\\' || js.startsWith("/*", at)) {
      throw new IllegalArgumentException("a script for packs has no text and no comment of several lines");
    }
    Kind kind = c == '\'' || c == '"' ? Kind.STRING
        : c == '/' && isRegexAfter(before) ? Kind.REGEX : isWord(js, at) ? Kind.WORD : Kind.SIGN;
    int end = switch (kind) {
      case STRING -> end(STRING, js, at);
      case REGEX -> end(REGEX, js, at);
      case WORD -> endOfWord(js, at);
      case SIGN -> js.startsWith("++", at) || js.startsWith("--", at) ? at + 2 : at + 1;
    };
    if (end == at) {
      throw new IllegalArgumentException("a text that does not end in its line");
    }
    return new Token(kind, js.substring(at, end), newLine);
  }

  private static boolean isWord(String js, int at) {
    char c = js.charAt(at);
    boolean isFraction = c == '.' && at + 1 < js.length() && Character.isDigit(js.charAt(at + 1));
    return isFraction || Character.isLetterOrDigit(c) || c == '_' || c == '$';
  }

  /** A number takes its point with it; a name does not. */
  private static int endOfWord(String js, int at) {
    return end(Character.isLetter(js.charAt(at)) || js.charAt(at) == '_' || js.charAt(at) == '$' ? NAME : WORD, js, at);
  }

  private static boolean isRegexAfter(List<Token> before) {
    if (before.isEmpty()) {
      return true;
    }
    Token last = before.get(before.size() - 1);
    return switch (last.kind()) {
      case SIGN -> !last.is(")") && !last.is("]") && !last.is("}") && last.text().length() == 1;
      case WORD -> BEFORE_REGEX.contains(last.text());
      case STRING, REGEX -> false;
    };
  }

  private static int end(Pattern pattern, String js, int at) {
    Matcher matcher = pattern.matcher(js).region(at, js.length());
    return matcher.lookingAt() ? matcher.end() : at;
  }
}
