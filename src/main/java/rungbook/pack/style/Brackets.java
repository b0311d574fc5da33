package rungbook.pack.style;

import java.util.List;

/** The brackets of a script. */
final class Brackets {

  private Brackets() {}

  static boolean isOpening(Token token) {
    return token.is("(") || token.is("[") || token.is("{");
  }

  static boolean isClosing(Token token) {
    return token.is(")") || token.is("]") || token.is("}");
  }

  /** Where the bracket that begins at a token ends. */
  static int close(List<Token> tokens, int open) {
    int depth = 0;
    for (int i = open; i < tokens.size(); i++) {
      depth += isOpening(tokens.get(i)) ? 1 : isClosing(tokens.get(i)) ? -1 : 0;
      if (depth == 0) {
        return i;
      }
    }
    throw new IllegalArgumentException("a bracket is not closed");
  }
}
