package rungbook.pack.drawing;

import java.util.ArrayList;
import java.util.List;
import rungbook.text.Lettering;

/** Sizes of the text in a drawing. */
final class Words {

  /** The height of the letters, in the unit of all lengths. */
  static final int LETTERS = 18;

  static final int LINE = 21;

  /** Bold letters are wider. */
  private static final double BOLD = 1.1;

  private Words() {}

  static int width(String text) {
    return (int) Math.ceil(Lettering.width(text, LETTERS * BOLD));
  }

  static int widest(List<String> lines) {
    return lines.stream().mapToInt(Words::width).max().orElse(0);
  }

  static List<String> regularLines(String text, int width) {
    return lines(text, (int) (width * BOLD));
  }

  /** In bold letters, broken between words only, so that a single word may be wider. */
  static List<String> lines(String text, int width) {
    var lines = new ArrayList<String>();
    for (String word : text.split(" ", -1)) {
      int last = lines.size() - 1;
      if (last >= 0 && width(lines.get(last) + " " + word) <= width) {
        lines.set(last, lines.get(last) + " " + word);
      } else {
        lines.add(word);
      }
    }
    return lines;
  }
}
