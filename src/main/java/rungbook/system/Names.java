package rungbook.system;

import java.util.Locale;

/** Compares names as people write them: ignores case; a hyphen equals a space. */
public final class Names {

  private Names() {}

  /** The normalized form of a name, for lookup. */
  public static String key(String written) {
    String key = written.strip();
    return isKey(key) ? key : folded(key);
  }

  private static boolean isKey(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (!((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || (c == ' ' && name.charAt(i - 1) != ' '))) {
        return false;
      }
    }
    return true;
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
