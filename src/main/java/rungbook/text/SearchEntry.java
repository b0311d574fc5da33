package rungbook.text;

import java.util.List;

/**
 * The searchable words of a tree. Every word of a query must match; a match in the title or the complaint scores higher
 * than one in a step.
 *
 * @param said the words of its title and complaint
 * @param steps the words of its steps' titles
 */
public record SearchEntry(List<SearchWord> said, List<SearchWord> steps) {

  private static final int IN_COMPLAINT_OR_TITLE = 4;
  private static final int IN_A_STEP = 1;

  public static SearchEntry of(String title, String complaint, List<String> steps) {
    return new SearchEntry(SearchWord.of(title + " " + complaint), SearchWord.of(String.join(" ", steps)));
  }

  /** How well the tree matches a query; 0 if a word does not match or the query is empty. */
  public int score(List<SearchWord> asked) {
    int total = 0;
    for (SearchWord word : asked) {
      int score = word.isIn(said) ? IN_COMPLAINT_OR_TITLE : word.isIn(steps) ? IN_A_STEP : 0;
      if (score == 0) {
        return 0;
      }
      total += score;
    }
    return total;
  }
}
