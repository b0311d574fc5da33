package rungbook.rules.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PatternMatrixTest {

  private static final int ANY = PatternMatrix.ANY;
  private static final int NIL = 0;
  private static final int ONE = 1;
  private static final int CONS = 2;
  private static final List<List<String>> LISTS = List.of(List.of("nil", "one", "cons"), List.of("nil", "one", "cons"));

  /** Maranget, Warnings for pattern matching (2007): the list example, its constructors taken without arguments. */
  @Test
  void marangetsListsLackACaseUntilAllAreThere() {
    List<int[]> two = List.of(new int[] {NIL, ANY}, new int[] {ANY, NIL});
    assertEquals(Optional.of(List.of("one", "one")), new PatternMatrix(LISTS, two).missing());
  }

  @Test
  void marangetsSixthRowIsUseless() {
    List<int[]> six = List.of(new int[] {NIL, ANY}, new int[] {ANY, NIL}, new int[] {ONE, ANY}, new int[] {ANY, ONE},
        new int[] {CONS, ANY},
        new int[] {ANY, CONS});
    PatternMatrix patterns = new PatternMatrix(LISTS, six);
    assertEquals(Optional.empty(), patterns.missing());
    for (int row = 0; row < 5; row++) {
      assertFalse(patterns.isUseless(row), "row " + row);
    }
    assertTrue(patterns.isUseless(5));
  }

  /** Against trying out every case: whether one is missing, whether the one named is, and which rows are useless. */
  @Test
  void agreesWithTryingEveryCase() {
    Random random = new Random(7);
    for (int round = 0; round < 3_000; round++) {
      int columns = 1 + random.nextInt(3);
      List<List<String>> words = new ArrayList<>();
      for (int column = 0; column < columns; column++) {
        words.add(List.of("a", "b", "c").subList(0, 2 + random.nextInt(2)));
      }
      List<int[]> rows = randomRows(random, words);
      PatternMatrix patterns = new PatternMatrix(words, rows);
      List<int[]> cases = cases(words, columns);
      assertEquals(cases.stream().anyMatch(one -> firstRow(rows, one) < 0), patterns.missing().isPresent());
      patterns.missing().ifPresent(found -> assertTrue(
          cases.stream().filter(one -> matches(words, found, one)).allMatch(one -> firstRow(rows, one) < 0)));
      for (int row = 0; row < rows.size(); row++) {
        int self = row;
        assertEquals(cases.stream().noneMatch(one -> firstRow(rows, one) == self), patterns.isUseless(row));
      }
    }
  }

  private static List<int[]> randomRows(Random random, List<List<String>> words) {
    var rows = new ArrayList<int[]>();
    for (int n = 1 + random.nextInt(6); n > 0; n--) {
      rows.add(words.stream().mapToInt(column -> random.nextInt(column.size() + 1) - 1).toArray());
    }
    return rows;
  }

  private static List<int[]> cases(List<List<String>> words, int columns) {
    List<int[]> cases = List.of(new int[columns]);
    for (int column = 0; column < columns; column++) {
      int at = column;
      cases = cases.stream().flatMap(one -> java.util.stream.IntStream.range(0, words.get(at).size()).mapToObj(word -> {
        int[] next = one.clone();
        next[at] = word;
        return next;
      })).toList();
    }
    return cases;
  }

  private static int firstRow(List<int[]> rows, int[] one) {
    for (int row = 0; row < rows.size(); row++) {
      boolean takes = true;
      for (int column = 0; column < one.length; column++) {
        takes &= rows.get(row)[column] == ANY || rows.get(row)[column] == one[column];
      }
      if (takes) {
        return row;
      }
    }
    return -1;
  }

  private static boolean matches(List<List<String>> words, List<String> found, int[] one) {
    boolean all = true;
    for (int column = 0; column < one.length; column++) {
      all &= found.get(column).equals("any") || found.get(column).equals(words.get(column).get(one[column]));
    }
    return all;
  }
}
