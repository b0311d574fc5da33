package rungbook.rules.wording;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import rungbook.text.English;

/** Writes a word with the capitals of the one that it replaces. */
final class Capitals {

  private Capitals() {}

  /**
   * {@code Mend}, {@code mend} and {@code repair} give {@code Repair}.
   *
   * @param written the word in the text
   * @param listed the same word in the list
   * @param use what is to be written, as the list has it
   */
  static String keep(String written, String listed, String use) {
    if (isUpper(written) && !isUpper(listed) && written.length() > 1) {
      return use.toUpperCase(Locale.ROOT);
    }
    if (startsUpper(listed) || !startsUpper(written)) {
      return use;
    }
    boolean eachWord = written.contains(" ") && Arrays.stream(written.split("\\s+")).allMatch(Capitals::startsUpper);
    return eachWord ? Arrays.stream(use.split(" ")).map(English::capital).collect(Collectors.joining(" "))
        : English.capital(use);
  }

  private static boolean isUpper(String word) {
    return word.equals(word.toUpperCase(Locale.ROOT)) && !word.equals(word.toLowerCase(Locale.ROOT));
  }

  private static boolean startsUpper(String word) {
    return Character.isUpperCase(word.charAt(0));
  }
}
