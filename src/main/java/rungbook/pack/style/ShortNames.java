package rungbook.pack.style;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Gives the names that one script declares shorter ones: a name the same one everywhere, so that scopes do not matter.
 * Names of properties stay. The script is a function of its own, so that nobody else knows what it declares.
 */
final class ShortNames {

  /** A script that declares one of these in one place may mean the browser's own in another. */
  private static final Set<String> GLOBAL = Set.of("window", "document", "history", "location", "navigator",
      "localStorage", "indexedDB", "crypto", "getSelection", "scrollTo", "scrollY", "innerHeight", "addEventListener",
      "setTimeout", "clearTimeout", "requestAnimationFrame", "decodeURIComponent", "encodeURIComponent", "undefined");

  /** Of two letters each. */
  private static final Set<String> WORDS = Set.of("as", "do", "if", "in", "is", "of");

  private static final String LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";

  private final List<Token> tokens;
  /** The innermost open bracket before each token; a space outside of all. */
  private final char[] inside;

  private ShortNames(List<Token> tokens) {
    this.tokens = tokens;
    this.inside = new char[tokens.size()];
    Deque<Character> open = new ArrayDeque<>();
    for (int i = 0; i < inside.length; i++) {
      inside[i] = open.isEmpty() ? ' ' : open.peek();
      Token token = tokens.get(i);
      if (Brackets.isOpening(token)) {
        open.push(token.text().charAt(0));
      } else if (Brackets.isClosing(token)) {
        open.pop();
      }
    }
  }

  /**
   * @throws IllegalArgumentException for forms that declare or name things in another way: arrows, destructuring,
   * shorthand properties
   */
  static List<Token> of(List<Token> tokens) {
    return new ShortNames(tokens).shortened();
  }

  private List<Token> shortened() {
    Map<String, String> names = names(declared());
    var out = new ArrayList<Token>();
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      String name = isVariable(i) ? names.getOrDefault(token.text(), token.text()) : token.text();
      out.add(new Token(token.kind(), name, token.newLine()));
    }
    return out;
  }

  /** The shortest for those that come most often. */
  private Map<String, String> names(Set<String> declared) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    Set<String> taken = new HashSet<>(WORDS);
    for (int i = 0; i < tokens.size(); i++) {
      if (isVariable(i)) {
        counts.merge(tokens.get(i).text(), 1, Integer::sum);
        taken.add(tokens.get(i).text());
      }
    }
    List<String> longest = counts.entrySet().stream().filter(entry -> declared.contains(entry.getKey()))
        .filter(entry -> entry.getKey().length() > 1)
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder())).map(Map.Entry::getKey).toList();
    Map<String, String> names = new HashMap<>();
    int next = 0;
    for (String name : longest) {
      String made = made(next++);
      while (taken.contains(made)) {
        made = made(next++);
      }
      names.put(name, made.length() < name.length() ? made : name);
    }
    return names;
  }

  private static String made(int number) {
    int count = LETTERS.length();
    String before = number < count ? "" : made(number / count - 1);
    return before + LETTERS.charAt(number % count);
  }

  private Set<String> declared() {
    var declared = new HashSet<String>();
    for (int i = 0; i < tokens.size(); i++) {
      if ((token(i).is("=") && token(i + 1).is(">") && !token(i - 1).is("=")) || isShorthand(i)) {
        throw notToldApart(i);
      }
      if (token(i).is("const") || token(i).is("let")) {
        variables(i + 1, declared);
      } else if (token(i).is("function") || (token(i).is("catch") && token(i + 1).is("("))) {
        parameters(i + 1, declared);
      }
    }
    if (declared.stream().anyMatch(GLOBAL::contains)) {
      throw new IllegalArgumentException("declared, and the browser has one too: " + declared);
    }
    return declared;
  }

  /** From the first name of a declaration to its end, over the brackets in its values. */
  private void variables(int from, Set<String> declared) {
    if (!token(from).isName()) {
      throw notToldApart(from);
    }
    declared.add(token(from).text());
    for (int i = from; i < tokens.size() && !token(i).is(";") && !token(i).is("of") && !token(i).is("in"); i++) {
      if (token(i).is(",")) {
        declared.add(token(i + 1).text());
      }
      i = Brackets.isOpening(token(i)) ? Brackets.close(tokens, i) : i;
    }
  }

  private void parameters(int from, Set<String> declared) {
    int i = from;
    for (; !token(i).is("("); i++) {
      declared.add(token(i).text());
    }
    for (; !token(i).is(")"); i++) {
      if (token(i).isName()) {
        declared.add(token(i).text());
      }
    }
  }

  /** A name of a property is after a point, or before a colon in an object. */
  private boolean isVariable(int i) {
    boolean isKey = token(i + 1).is(":") && (token(i - 1).is("{") || token(i - 1).is(",")) && inside[i] == '{';
    return token(i).isName() && !token(i - 1).is(".") && !isKey;
  }

  /** {@code {a, b}}: a property that is named after its value. */
  private boolean isShorthand(int i) {
    return token(i).isName() && inside[i] == '{' && (token(i - 1).is("{") || token(i - 1).is(","))
        && (token(i + 1).is(",") || token(i + 1).is("}"));
  }

  private IllegalArgumentException notToldApart(int i) {
    return new IllegalArgumentException(
        "not told apart in a script for packs: " + token(i - 1).text() + token(i).text());
  }

  private Token token(int i) {
    return i < 0 || i >= tokens.size() ? new Token(Token.Kind.SIGN, " ", false) : tokens.get(i);
  }
}
