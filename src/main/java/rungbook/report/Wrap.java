package rungbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines of at most {@link #WIDTH} columns, at spaces. */
final class Wrap {

  static final int WIDTH = 100;

  /** Spaces, but not the one between a figure and its unit. */
  private static final Pattern BREAK = Pattern.compile("\\s+(?!(?:[mk]?V|[kM]?Ω|m?A|µA|µF|°F|MB)(?:[^\\p{L}]|$))");

  private Wrap() {}

  /**
   * @param first columns already taken on the first line
   * @param indent columns left free on the lines after it
   * @return at least one line; a word wider than a line stands alone on one
   */
  static List<String> lines(String text, int first, int indent) {
    var lines = new ArrayList<String>();
    var line = new StringBuilder();
    int used = first;
    for (String word : BREAK.split(text.strip())) {
      int width = Columns.of(word);
      if (used + width > WIDTH && used > indent) {
        lines.add(line.toString().stripTrailing());
        line.setLength(0);
        used = indent;
      }
      line.append(word).append(' ');
      used += width + 1;
    }
    lines.add(line.toString().stripTrailing());
    return lines;
  }

  /** The lines joined, each after the first behind its indent. */
  static String text(String text, int first, int indent) {
    return String.join("\n" + " ".repeat(indent), lines(text, first, indent));
  }
}
