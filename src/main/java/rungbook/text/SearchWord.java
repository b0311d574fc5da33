package rungbook.text;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

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

  /** A shorter word is a letter away from too many others. */
  private static final int SHORTEST_ONE_OFF = 5;

  private static final Pattern INSIDE_A_WORD = Pattern.compile("[\\p{M}'\u2019]+");
  private static final Pattern LETTERS_WITH_SLASH = Pattern
      .compile("(^|[^\\p{L}\\p{N}])(\\p{L})/(\\p{L})(?![\\p{L}\\p{N}])");
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final Pattern WITH_VOWEL = Pattern.compile(".*[aeiouy].*");
  private static final Pattern DOUBLED_AT_END = Pattern.compile(".*([bdgmnprt])\\1");
  private static final List<String> ENDINGS = List.of("ing", "ed", "es", "s");

  /** The words of a text in lower case, without accents. */
  public static List<SearchWord> of(String text) {
    String whole = INSIDE_A_WORD.matcher(Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD))
        .replaceAll("");
    String plain = LETTERS_WITH_SLASH.matcher(whole).replaceAll("$1$2$3");
    return BETWEEN_WORDS.splitAsStream(plain).filter(word -> !word.isEmpty())
        .map(word -> new SearchWord(word, stem(word))).toList();
  }

  /** Whether a text contains this word, a word that starts with it, or the same word with another ending. */
  public boolean isIn(List<SearchWord> said) {
    return said.stream().anyMatch(this::finds);
  }

  /** Whether a text contains a word of which this one is a letter away: one too many, missing, other, or exchanged. */
  boolean isOneLetterOffIn(List<SearchWord> said) {
    return word.length() >= SHORTEST_ONE_OFF && said.stream().anyMatch(other -> isOneAway(word, other.word));
  }

  /** By what is left between the letters that both begin with and those that both end with. */
  private static boolean isOneAway(String one, String other) {
    int begin = 0;
    while (begin < Math.min(one.length(), other.length()) && one.charAt(begin) == other.charAt(begin)) {
      begin++;
    }
    int end = 0;
    while (end < Math.min(one.length(), other.length()) - begin
        && one.charAt(one.length() - 1 - end) == other.charAt(other.length() - 1 - end)) {
      end++;
    }
    int left = one.length() - begin - end;
    int right = other.length() - begin - end;
    boolean isExchanged = left == 2 && right == 2 && one.charAt(begin) == other.charAt(begin + 1)
        && one.charAt(begin + 1) == other.charAt(begin);
    return isExchanged || Math.max(left, right) == 1;
  }

  private boolean finds(SearchWord said) {
    return said.stem.equals(stem) || (word.length() > WHOLE && said.word.startsWith(word));
  }

  /** @param word as {@link #word} has it */
  public static String stem(String word) {
    for (String ending : ENDINGS) {
      String rest = word.endsWith(ending) && !word.endsWith("ss") ? word.substring(0, word.length() - ending.length())
          : "";
      if (rest.length() >= SHORTEST_STEM && WITH_VOWEL.matcher(rest).matches()) {
        return withoutE(single(rest));
      }
    }
    return withoutE(word);
  }

  /** {@code stopp} of {@code stopping} is {@code stop}, but {@code buzz} stays. */
  private static String single(String rest) {
    return DOUBLED_AT_END.matcher(rest).matches() ? rest.substring(0, rest.length() - 1) : rest;
  }

  private static String withoutE(String word) {
    return word.length() > SHORTEST_STEM && word.endsWith("e") ? word.substring(0, word.length() - 1) : word;
  }
}
