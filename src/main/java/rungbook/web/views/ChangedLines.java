package rungbook.web.views;

import com.github.difflib.DiffUtils;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which lines differ between two texts, in near linear time. The common beginning and end are left out; the rest is cut
 * at the lines that occur once in each (the patience method); only short pieces between those cuts are compared line by
 * line. A piece that is too large for that counts as replaced.
 */
final class ChangedLines {
  /** The comparison of a piece (Myers) takes as many steps as its lines, squared, in the worst case. */
  private static final int MOST_LINES_COMPARED = 600;
  private static final long MOST_STEPS = 10_000_000;
  private static final int MOST_CUTS = 16;
  private final List<String> before;
  private final List<String> after;
  private final List<Block> blocks = new ArrayList<>();
  private long stepsLeft = MOST_STEPS;

  private ChangedLines(List<String> before, List<String> after) {
    this.before = before;
    this.after = after;
  }

  /**
   * Lines {@code from} to {@code to} of the older text became lines {@code newFrom} to {@code newTo}; ends are
   * exclusive.
   */
  record Block(int from, int to, int newFrom, int newTo) {
    int lines() {
      return to - from + newTo - newFrom;
    }
  }

  /** In the order of the texts, and none touches the next. */
  static List<Block> of(List<String> before, List<String> after) {
    var changed = new ChangedLines(before, after);
    changed.compare(new Block(0, before.size(), 0, after.size()), 0);
    return changed.joined();
  }

  private void compare(Block whole, int cuts) {
    var piece = trimmed(whole);
    if (piece.from() == piece.to() || piece.newFrom() == piece.newTo()) {
      add(piece);
    } else if (piece.lines() <= MOST_LINES_COMPARED && stepsLeft > 0) {
      compareByLine(piece);
    } else if (cuts == MOST_CUTS) {
      add(piece);
    } else {
      cut(piece, cuts);
    }
  }

  private Block trimmed(Block piece) {
    var from = piece.from();
    var newFrom = piece.newFrom();
    while (from < piece.to() && newFrom < piece.newTo() && before.get(from).equals(after.get(newFrom))) {
      from++;
      newFrom++;
    }
    var to = piece.to();
    var newTo = piece.newTo();
    while (to > from && newTo > newFrom && before.get(to - 1).equals(after.get(newTo - 1))) {
      to--;
      newTo--;
    }
    return new Block(from, to, newFrom, newTo);
  }

  private void compareByLine(Block piece) {
    stepsLeft -= (long) piece.lines() * piece.lines();
    var deltas = DiffUtils.diff(before.subList(piece.from(), piece.to()), after.subList(piece.newFrom(), piece.newTo()))
        .getDeltas();
    for (var delta : deltas) {
      var from = piece.from() + delta.getSource().getPosition();
      var newFrom = piece.newFrom() + delta.getTarget().getPosition();
      add(new Block(from, from + delta.getSource().size(), newFrom, newFrom + delta.getTarget().size()));
    }
  }

  private void cut(Block piece, int cuts) {
    var anchors = inBothOrders(lonely(piece));
    if (anchors.isEmpty()) {
      add(piece);
      return;
    }
    var from = piece.from();
    var newFrom = piece.newFrom();
    for (var anchor : anchors) {
      compare(new Block(from, anchor[0], newFrom, anchor[1]), cuts + 1);
      from = anchor[0] + 1;
      newFrom = anchor[1] + 1;
    }
    compare(new Block(from, piece.to(), newFrom, piece.newTo()), cuts + 1);
  }

  /** Lines that occur once in each text of the piece, as pairs of line numbers in the older text's order. */
  private List<int[]> lonely(Block piece) {
    var places = places(before, piece.from(), piece.to());
    var newPlaces = places(after, piece.newFrom(), piece.newTo());
    var pairs = new ArrayList<int[]>();
    for (var line = piece.from(); line < piece.to(); line++) {
      var newLine = newPlaces.getOrDefault(before.get(line), -1);
      if (newLine >= 0 && places.getOrDefault(before.get(line), -1) >= 0) {
        pairs.add(new int[] {line, newLine});
      }
    }
    return pairs;
  }

  private static Map<String, Integer> places(List<String> lines, int from, int to) {
    var places = new HashMap<String, Integer>();
    for (var line = from; line < to; line++) {
      places.merge(lines.get(line), line, (one, another) -> -1);
    }
    return places;
  }

  /** The longest list of pairs that have the same order in both texts: a longest increasing subsequence. */
  private static List<int[]> inBothOrders(List<int[]> pairs) {
    var last = new int[pairs.size()];
    var previous = new int[pairs.size()];
    var length = 0;
    for (var i = 0; i < pairs.size(); i++) {
      var wanted = pairs.get(i)[1];
      var low = 0;
      var high = length;
      while (low < high) {
        var middle = (low + high) >>> 1;
        if (pairs.get(last[middle])[1] < wanted) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      previous[i] = low == 0 ? -1 : last[low - 1];
      last[low] = i;
      length = Math.max(length, low + 1);
    }
    var chain = new int[length][];
    for (int at = length - 1, i = length == 0 ? -1 : last[length - 1]; at >= 0; at--, i = previous[i]) {
      chain[at] = pairs.get(i);
    }
    return Arrays.asList(chain);
  }

  private void add(Block block) {
    if (block.lines() > 0) {
      blocks.add(block);
    }
  }

  private List<Block> joined() {
    var joined = new ArrayList<Block>();
    for (var block : blocks) {
      var last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && last.to() == block.from() && last.newTo() == block.newFrom()) {
        joined.set(joined.size() - 1, new Block(last.from(), block.to(), last.newFrom(), block.newTo()));
      } else {
        joined.add(block);
      }
    }
    return joined;
  }
}
