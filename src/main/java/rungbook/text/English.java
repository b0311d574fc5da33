package rungbook.text;

import java.util.Locale;

/** Small forms of English sentences. */
public final class English {

  private English() {}

  /**
   * {@code 1 tree}, {@code 2 trees}.
   *
   * @param number as displayed; {@code 1} gives the singular
   */
  public static String counted(String number, String word) {
    return number + " " + word + (number.equals("1") ? "" : "s");
  }

  public static String counted(long number, String word) {
    return counted(Long.toString(number), word);
  }

  /** {@code a task}, {@code an end}. */
  public static String withArticle(String noun) {
    return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
  }

  /** With its first letter in upper case. */
  public static String capital(String words) {
    return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
