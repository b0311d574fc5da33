package rungbook.system;

import java.util.Locale;

/** Names as people write them: case does not count, hyphens and spaces are the same. */
public final class Names {

  private Names() {}

  /** The form under which a name is looked up. */
  public static String key(String written) {
    String key = written.strip();
    return isKey(key) ? key : folded(key);
  }

  private static boolean isKey(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == ' ' && name.charAt(i - 1) != ' ')) {
        return false;
      }
    }
    return true;
  }

  /** Written out, since every name of every step passes here. */
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
