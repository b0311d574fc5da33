package rungbook.rules.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A matrix of answers: a row for each answer in the order of the text, a column for each thing checked, a word or
 * {@link #ANY} in each cell. Finds words that no row accepts, and rows that accept nothing new, with the usefulness
 * algorithm of Maranget, <i>Warnings for pattern matching</i>, J. Functional Programming 17 (2007), for words without
 * parts.
 */
final class PatternMatrix {

  static final int ANY = -1;

  /** The most rows to visit before giving up: the algorithm's work can double with every column. */
  private static final int MOST_WORK = 20_000;

  private final List<List<String>> words;
  private final List<int[]> rows;
  private int work;

  /**
   * @param words by column: every possible word; if there are none, the column does not matter
   * @param rows by answer: for each column the word's index or {@link #ANY}
   */
  PatternMatrix(List<List<String>> words, List<int[]> rows) {
    this.words = words;
    this.rows = rows;
  }

  /**
   * Words that no row accepts, one for each column ({@code any} where it does not matter); empty if every case has a
   * row.
   */
  Optional<List<String>> missing() {
    work = 0;
    int[] wild = new int[words.size()];
    Arrays.fill(wild, ANY);
    return useful(rows, wild, 0).map(found -> {
      Collections.reverse(found);
      return found;
    });
  }

  /** Whether the rows above a row accept everything that it accepts. */
  boolean isUseless(int row) {
    work = 0;
    return useful(rows.subList(0, row), rows.get(row), 0).isEmpty() && !gaveUp();
  }

  /** Whether the last search gave up, so its result is not certain. */
  boolean gaveUp() {
    return work > MOST_WORK;
  }

  /** A case that the query accepts and no row does, from this column on; its words in reverse order. */
  private Optional<List<String>> useful(List<int[]> above, int[] query, int column) {
    work += above.size() + 1;
    if (column == query.length || gaveUp()) {
      return above.isEmpty() && !gaveUp() ? Optional.of(new ArrayList<>()) : Optional.empty();
    }
    if (query[column] != ANY) {
      return with(name(column, query[column]), useful(taking(above, column, query[column]), query, column + 1));
    }
    int absent = absentWord(above, column);
    if (absent != ANY || words.get(column).isEmpty()) {
      return with(isAnyWordUsed(above, column) ? name(column, absent) : "any",
          useful(wild(above, column), query, column + 1));
    }
    for (int word = 0; word < words.get(column).size(); word++) {
      Optional<List<String>> found = with(name(column, word), useful(taking(above, column, word), query, column + 1));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private static Optional<List<String>> with(String word, Optional<List<String>> found) {
    found.ifPresent(list -> list.add(word));
    return found;
  }

  private String name(int column, int word) {
    return words.get(column).get(word);
  }

  private int absentWord(List<int[]> above, int column) {
    boolean[] used = new boolean[words.get(column).size()];
    for (int[] row : above) {
      if (row[column] != ANY) {
        used[row[column]] = true;
      }
    }
    for (int word = 0; word < used.length; word++) {
      if (!used[word]) {
        return word;
      }
    }
    return ANY;
  }

  private static boolean isAnyWordUsed(List<int[]> above, int column) {
    return above.stream().anyMatch(row -> row[column] != ANY);
  }

  private static List<int[]> taking(List<int[]> above, int column, int word) {
    return above.stream().filter(row -> row[column] == word || row[column] == ANY).toList();
  }

  private static List<int[]> wild(List<int[]> above, int column) {
    return above.stream().filter(row -> row[column] == ANY).toList();
  }
}
