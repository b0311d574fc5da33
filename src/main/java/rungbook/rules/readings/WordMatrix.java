package rungbook.rules.readings;

import java.util.ArrayList;
import java.util.List;
import rungbook.tree.Answer;
import rungbook.tree.Way;

/**
 * Answers in words as {@link PatternMatrix}: a column has the words used in it; {@code yes} and {@code no} imply each
 * other.
 */
final class WordMatrix {

  private static final String YES = "yes";
  private static final String NO = "no";

  private WordMatrix() {}

  /** @param things the number of columns */
  static PatternMatrix of(List<Answer.Words> answers, int things) {
    var words = new ArrayList<List<String>>(things);
    for (int column = 0; column < things; column++) {
      words.add(wordsOf(answers, column));
    }
    var rows = new ArrayList<int[]>(answers.size());
    for (Answer.Words answer : answers) {
      int[] row = new int[things];
      for (int column = 0; column < things; column++) {
        row[column] = words.get(column).indexOf(answer.words().get(column));
      }
      rows.add(row);
    }
    return new PatternMatrix(words, rows);
  }

  /** Whether only {@code yes} and {@code no} are possible, which leaves nothing for {@code anything else}. */
  static boolean isClosed(List<Way> ways) {
    for (Way way : ways) {
      for (String word : ((Answer.Words) way.answer()).words()) {
        if (!word.equals(YES) && !word.equals(NO) && !word.equals(Answer.Words.ANY)) {
          return false;
        }
      }
    }
    return true;
  }

  private static List<String> wordsOf(List<Answer.Words> answers, int column) {
    var words = new ArrayList<String>();
    for (Answer.Words answer : answers) {
      add(answer.words().get(column), words);
    }
    if (words.contains(YES) || words.contains(NO)) {
      add(YES, words);
      add(NO, words);
    }
    return words;
  }

  private static void add(String word, List<String> words) {
    if (!word.equals(Answer.Words.ANY) && !words.contains(word)) {
      words.add(word);
    }
  }
}
