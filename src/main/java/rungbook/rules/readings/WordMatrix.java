package rungbook.rules.readings;

import java.util.ArrayList;
import java.util.List;
import rungbook.system.Names;
import rungbook.tree.Answer;

/**
 * Answers in words as {@link PatternMatrix}: a column has the words used in it and the values that its sight can show;
 * {@code yes} and {@code no} imply each other.
 *
 * @param values by column: the keys of all that can be answered there; empty where the system does not say
 */
record WordMatrix(List<Answer.Words> answers, List<List<String>> values) {

  private static final String YES = "yes";
  private static final String NO = "no";

  PatternMatrix patterns() {
    var words = new ArrayList<List<String>>(values.size());
    for (int column = 0; column < values.size(); column++) {
      words.add(wordsOf(column));
    }
    var rows = new ArrayList<int[]>(answers.size());
    for (Answer.Words answer : answers) {
      int[] row = new int[values.size()];
      for (int column = 0; column < row.length; column++) {
        row[column] = words.get(column).indexOf(word(answer, column));
      }
      rows.add(row);
    }
    return new PatternMatrix(words, rows);
  }

  /** Whether only {@code yes} and {@code no}, or values, are possible: nothing is left for {@code anything else}. */
  boolean isClosed() {
    for (Answer.Words answer : answers) {
      for (int column = 0; column < values.size(); column++) {
        String word = word(answer, column);
        boolean isKnown = values.get(column).isEmpty() ? word.equals(YES) || word.equals(NO)
            : values.get(column).contains(word);
        if (!isKnown && !word.equals(Answer.Words.ANY)) {
          return false;
        }
      }
    }
    return true;
  }

  private List<String> wordsOf(int column) {
    var words = new ArrayList<String>();
    for (Answer.Words answer : answers) {
      add(word(answer, column), words);
    }
    if (words.contains(YES) || words.contains(NO)) {
      add(YES, words);
      add(NO, words);
    }
    values.get(column).forEach(value -> add(value, words));
    return words;
  }

  private String word(Answer.Words answer, int column) {
    String word = answer.words().get(column);
    return values.get(column).isEmpty() ? word : Names.key(word);
  }

  private static void add(String word, List<String> words) {
    if (!word.equals(Answer.Words.ANY) && !words.contains(word)) {
      words.add(word);
    }
  }
}
