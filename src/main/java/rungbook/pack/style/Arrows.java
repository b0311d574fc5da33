package rungbook.pack.style;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Writes functions without a name as arrows, where that means the same: they ask for no {@code this} of their own. */
final class Arrows {

  /** Beside these an arrow is a whole operand. */
  private static final Set<String> BEFORE = Set.of("(", ",", "=", ":", "[", "?", "return");

  private static final Set<String> AFTER = Set.of(")", ",", ";", "]", "}", ":");

  private final List<Token> tokens;
  private final List<Token> out = new ArrayList<>();

  private Arrows(List<Token> tokens) {
    this.tokens = tokens;
  }

  static List<Token> of(List<Token> tokens) {
    var arrows = new Arrows(tokens);
    arrows.write(0, tokens.size());
    return arrows.out;
  }

  private void write(int from, int to) {
    int i = from;
    while (i < to) {
      if (canBeArrow(i)) {
        i = arrow(i);
      } else {
        out.add(tokens.get(i++));
      }
    }
  }

  /** Writes one, and says where what follows it begins. */
  private int arrow(int function) {
    int endOfParameters = close(function + 1);
    int end = close(endOfParameters + 1);
    boolean isOne = endOfParameters == function + 3;
    out.addAll(isOne ? tokens.subList(function + 2, function + 3) : tokens.subList(function + 1, endOfParameters + 1));
    out.add(new Token(Token.Kind.SIGN, "=>", false));
    int body = endOfParameters + 1;
    if (isOneReturn(body, end)) {
      write(body + 2, end - 1);
    } else {
      write(body, end + 1);
    }
    return end + 1;
  }

  private boolean canBeArrow(int i) {
    if (i == 0 || i + 1 == tokens.size() || !tokens.get(i).is("function") || !tokens.get(i + 1).is("(")
        || !BEFORE.contains(tokens.get(i - 1).text())) {
      return false;
    }
    int end = close(close(i + 1) + 1);
    return end + 1 < tokens.size() && AFTER.contains(tokens.get(end + 1).text())
        && tokens.subList(i, end).stream().noneMatch(token -> token.is("this") || token.is("arguments"));
  }

  /** Whether a body only returns what does not look like a body itself. */
  private boolean isOneReturn(int open, int end) {
    if (end < open + 4 || !tokens.get(open + 1).is("return") || tokens.get(open + 2).is("{")
        || tokens.get(open + 2).is(";") || !tokens.get(end - 1).is(";")) {
      return false;
    }
    for (int i = open + 2; i < end - 1; i++) {
      if (tokens.get(i).is(";")) {
        return false;
      }
      i = Brackets.isOpening(tokens.get(i)) ? close(i) : i;
    }
    return true;
  }

  private int close(int open) {
    return Brackets.close(tokens, open);
  }
}
