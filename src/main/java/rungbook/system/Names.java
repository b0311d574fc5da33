package rungbook.system;

import java.util.Locale;

/** Compares names as people write them: ignores case; a hyphen equals a space. */
public final class Names {

  private Names() {}

  /** The normalized form of a name, for lookup. */
  public static String key(String written) {
    return isKey(written) ? written : folded(written.strip());
  }

  private static boolean isKey(String name) {
    boolean afterSpace = true;
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      boolean isSpace = c == ' ';
      if (isSpace ? afterSpace : !((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))) {
        return false;
      }
      afterSpace = isSpace;
    }
    return !afterSpace || name.isEmpty();
  }

  /** A loop instead of a regular expression, because every name of every step passes here. */
  private static String folded(String name) {
    var key = new StringBuilder(name.length());
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i) == '-' ? ' ' : name.charAt(i);
      if (!Character.isWhitespace(c)) {
        key.append(c);
      } else if (key.length() > 0 && key.charAt(key.length() - 1) != ' ') {
        key.append(' ');
      }
    }
    return key.toString().toLowerCase(Locale.ROOT);
  }
}
