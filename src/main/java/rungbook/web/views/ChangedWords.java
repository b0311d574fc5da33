package rungbook.web.views;

import com.github.difflib.DiffUtils;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.regex.Pattern;
import rungbook.web.views.Difference.Part;

/**
 * Which words of a changed line changed. All lines of a difference share one budget; a line beyond it has no word
 * marked.
 */
final class ChangedWords {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}_]+|\\s+|.", Pattern.DOTALL);
  private static final int MOST_CHARACTERS_IN_A_LINE = 4_000;
  /** Comparing two lines (Myers) takes as many steps as their words, squared, in the worst case, and some to begin. */
  private static final long MOST_STEPS = 4_000_000;
  private static final int STEPS_TO_BEGIN = 1_000;
  private long stepsLeft = MOST_STEPS;
  private boolean complete = true;

  /** A line before and after. */
  record Pair(List<Part> before, List<Part> after) {}

  /** Whether every line was compared word by word so far. */
  boolean isComplete() {
    return complete;
  }

  Pair of(String before, String after) {
    if (stepsLeft <= 0 || before.length() + after.length() > MOST_CHARACTERS_IN_A_LINE) {
      return unmarked(before, after);
    }
    var words = words(before);
    var newWords = words(after);
    var together = words.size() + newWords.size();
    stepsLeft -= STEPS_TO_BEGIN + (long) together * together;
    var gone = new BitSet();
    var come = new BitSet();
    for (var delta : DiffUtils.diff(words, newWords).getDeltas()) {
      gone.set(delta.getSource().getPosition(), delta.getSource().getPosition() + delta.getSource().size());
      come.set(delta.getTarget().getPosition(), delta.getTarget().getPosition() + delta.getTarget().size());
    }
    return new Pair(parts(words, gone), parts(newWords, come));
  }

  private Pair unmarked(String before, String after) {
    complete = false;
    return new Pair(plain(before), plain(after));
  }

  static List<Part> plain(String line) {
    return line.isEmpty() ? List.of() : List.of(new Part(line, false));
  }

  private static List<String> words(String line) {
    return WORD.matcher(line).results().map(found -> found.group()).toList();
  }

  private static List<Part> parts(List<String> words, BitSet changed) {
    var parts = new ArrayList<Part>();
    for (var from = 0; from < words.size();) {
      var isChanged = changed.get(from);
      var end = isChanged ? changed.nextClearBit(from) : changed.nextSetBit(from);
      var to = end < 0 ? words.size() : Math.min(end, words.size());
      parts.add(new Part(String.join("", words.subList(from, to)), isChanged));
      from = to;
    }
    return parts;
  }
}
