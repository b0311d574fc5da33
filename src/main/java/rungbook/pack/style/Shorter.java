package rungbook.pack.style;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Writes what every script has in fewer letters: no semicolon before the end of a block, {@code !0} for true, and one
 * {@code let} for declarations that follow each other.
 */
final class Shorter {

  private static final Map<String, String> VALUES = Map.of("true", "!0", "false", "!1");

  private static final Token LET = new Token(Token.Kind.WORD, "let", false);

  private static final Token COMMA = new Token(Token.Kind.SIGN, ",", false);

  /** After their bracket a semicolon is a statement of its own. */
  private static final Set<String> WITH_STATEMENT = Set.of("for", "while", "if");

  private final List<Token> tokens;

  private Shorter(List<Token> tokens) {
    this.tokens = tokens;
  }

  static List<Token> of(List<Token> tokens) {
    return new Shorter(declared(tokens)).written();
  }

  private List<Token> written() {
    var out = new ArrayList<Token>();
    Set<Integer> afterDeclarations = afterDeclarations();
    for (int i = 0; i < tokens.size(); i++) {
      if (!isNeedless(i)) {
        Token token = written(i);
        out.add(afterDeclarations.contains(i) ? new Token(token.kind(), token.text(), false) : token);
      }
    }
    return out;
  }

  /** What follows a function with a name: no line has to end before it. */
  private Set<Integer> afterDeclarations() {
    var after = new HashSet<Integer>();
    for (int i = 1; i + 2 < tokens.size(); i++) {
      boolean isStatement = tokens.get(i - 1).is(";") || tokens.get(i - 1).is("{") || tokens.get(i - 1).is("}");
      if (isStatement && tokens.get(i).is("function") && tokens.get(i + 2).is("(")) {
        after.add(Brackets.close(tokens, Brackets.close(tokens, i + 2) + 1) + 1);
      }
    }
    return after;
  }

  /** A statement that declares goes on in the next one that does. */
  private static List<Token> declared(List<Token> tokens) {
    var out = new ArrayList<Token>();
    Deque<Boolean> declares = new ArrayDeque<>(List.of(false));
    boolean isStart = true;
    for (Token token : tokens) {
      boolean isDeclaration = token.is("const") || token.is("let");
      if (isStart && isDeclaration && declares.peek() && out.get(out.size() - 1).is(";")) {
        out.set(out.size() - 1, COMMA);
      } else {
        if (isStart && token.kind() == Token.Kind.WORD) {
          declares.pop();
          declares.push(isDeclaration);
        }
        out.add(isDeclaration ? new Token(LET.kind(), LET.text(), token.newLine()) : token);
      }
      if (Brackets.isOpening(token)) {
        declares.push(false);
      } else if (Brackets.isClosing(token)) {
        declares.pop();
      }
      isStart = token.is(";") || token.is("{") || token.is("}");
    }
    return out;
  }

  private boolean isNeedless(int i) {
    return tokens.get(i).is(";") && i + 1 < tokens.size() && tokens.get(i + 1).is("}") && i > 0
        && !tokens.get(i - 1).is("{") && !isStatement(i);
  }

  /** Whether a semicolon is all that a loop or a condition does. */
  private boolean isStatement(int semicolon) {
    int depth = 0;
    for (int i = semicolon - 1; i > 0 && tokens.get(semicolon - 1).is(")"); i--) {
      depth += Brackets.isClosing(tokens.get(i)) ? 1 : Brackets.isOpening(tokens.get(i)) ? -1 : 0;
      if (depth == 0) {
        return WITH_STATEMENT.contains(tokens.get(i - 1).text());
      }
    }
    return tokens.get(semicolon - 1).is("else");
  }

  private Token written(int i) {
    Token token = tokens.get(i);
    boolean isProperty = (i > 0 && tokens.get(i - 1).is("."))
        || (i + 1 < tokens.size() && tokens.get(i + 1).is(":") && !tokens.get(i - 1).is("?"));
    return token.kind() == Token.Kind.WORD && VALUES.containsKey(token.text()) && !isProperty
        ? new Token(Token.Kind.SIGN, VALUES.get(token.text()), token.newLine()) : token;
  }
}
