package rungbook.system;

import java.util.Locale;

/** Names as people write them: case does not count, hyphens and spaces are the same. */
public final class Names {

  private Names() {}

  /** The form under which a name is looked up. */
  public static String key(String written) {
    boolean plain = true;
    for (int i = 0; i < written.length() && plain; i++) {
      char c = written.charAt(i);
      plain = c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == ' ' && i > 0 && written.charAt(i - 1) != ' ';
    }
    return plain ? written.stripTrailing() : written.strip().replace('-', ' ').replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
