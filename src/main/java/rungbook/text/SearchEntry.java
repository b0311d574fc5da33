package rungbook.text;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The searchable words of a tree. The more words of a query it has, the better it matches; a word of the title counts
 * most, one of a step least.
 *
 * @param title the words of its title
 * @param said the words of its title and complaint
 * @param near what customers say instead of those
 * @param steps the words of its steps' titles
 */
public record SearchEntry(List<SearchWord> title, List<SearchWord> said, List<SearchWord> near,
    List<SearchWord> steps) {

  private static final int IN_THE_TITLE = 5;
  private static final int IN_THE_COMPLAINT = 4;
  private static final int NEAR_IT = 3;
  private static final int ONE_LETTER_OFF = 2;
  private static final int IN_A_STEP = 1;

  public static SearchEntry of(String title, String complaint, List<String> steps) {
    List<SearchWord> said = SearchWord.of(title + " " + complaint);
    return new SearchEntry(SearchWord.of(title), said, Synonyms.of(said), SearchWord.of(String.join(" ", steps)));
  }

  /** The words of a query that tell one complaint from another; all of it if there are none. */
  public static List<SearchWord> asked(String query) {
    List<SearchWord> words = SearchWord.of(query);
    List<SearchWord> telling = words.stream().filter(word -> !Synonyms.SAID_WITH_ANYTHING.contains(word.word()))
        .toList();
    return telling.isEmpty() ? words : telling;
  }

  /** What a query leaves out, as {@code search.js} reads it. */
  public static String leftOut() {
    return Synonyms.SAID_WITH_ANYTHING.stream().sorted().collect(Collectors.joining(" "));
  }

  /**
   * How well the tree matches a query; 0 if no word matches or the query is empty.
   *
   * @param asked as {@link #asked} reads it
   */
  public int score(List<SearchWord> asked) {
    return asked.stream().mapToInt(this::score).sum();
  }

  private int score(SearchWord word) {
    return word.isIn(title) ? IN_THE_TITLE : word.isIn(said) ? IN_THE_COMPLAINT : word.isIn(near) ? NEAR_IT
        : word.isOneLetterOffIn(said) || word.isOneLetterOffIn(near) ? ONE_LETTER_OFF
            : word.isIn(steps) ? IN_A_STEP : 0;
  }
}
