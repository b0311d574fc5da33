package rungbook.text;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A normalized word: {@code a/c} is {@code ac}, {@code won't} is {@code wont}. The index of packs normalizes words the
 * same way in {@code index.js}; a test compares the two.
 *
 * @param stem the word without a common English ending, so that {@code stops} finds {@code stopping}
 */
public record SearchWord(String word, String stem) {

  /** In characters; a word this short is a prefix of too many others, so it must match a whole word. */
  private static final int WHOLE = 2;

  private static final int SHORTEST_STEM = 3;

  /** The words of a text in lower case, without accents. */
  public static List<SearchWord> of(String text) {
    String plain = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD)
        .replaceAll("[\\p{M}'\u2019]+", "")
        .replaceAll("(^|[^\\p{L}\\p{N}])(\\p{L})/(\\p{L})(?![\\p{L}\\p{N}])", "$1$2$3");
    return Arrays.stream(plain.split("[^\\p{L}\\p{N}]+")).filter(word -> !word.isEmpty())
        .map(word -> new SearchWord(word, stem(word))).toList();
  }

  /** Whether a text contains this word, a word that starts with it, or the same word with another ending. */
  public boolean isIn(List<SearchWord> said) {
    return said.stream().anyMatch(this::finds);
  }

  private boolean finds(SearchWord said) {
    return said.stem.equals(stem) || (word.length() > WHOLE && said.word.startsWith(word));
  }

  private static String stem(String word) {
    for (String ending : List.of("ing", "ed", "es", "s")) {
      String rest = word.endsWith(ending) && !word.endsWith("ss") ? word.substring(0, word.length() - ending.length())
          : "";
      if (rest.length() >= SHORTEST_STEM && rest.matches(".*[aeiouy].*")) {
        return withoutE(single(rest));
      }
    }
    return withoutE(word);
  }

  /** {@code stopp} of {@code stopping} is {@code stop}, but {@code buzz} stays. */
  private static String single(String rest) {
    return rest.matches(".*([bdgmnprt])\\1") ? rest.substring(0, rest.length() - 1) : rest;
  }

  private static String withoutE(String word) {
    return word.length() > SHORTEST_STEM && word.endsWith("e") ? word.substring(0, word.length() - 1) : word;
  }
}
