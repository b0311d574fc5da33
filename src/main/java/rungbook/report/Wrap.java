package rungbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines of at most {@link #WIDTH} columns, at spaces. */
final class Wrap {

  static final int WIDTH = 100;

  /** Units, which stay on the line of the number before them. */
  private static final Pattern UNIT = Pattern.compile("(?:[mk]?V|[kM]?Ω|m?A|µA|µF|°F|MB)(?:[^\\p{L}]|$)");

  private Wrap() {}

  /**
   * @param first columns already taken on the first line
   * @param indent columns left blank on the following lines
   * @return at least one line; a word wider than a line has a line of its own
   */
  static List<String> lines(String text, int first, int indent) {
    var lines = new ArrayList<String>();
    var line = new StringBuilder();
    int used = first;
    for (String word : words(text.strip())) {
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

  /** The words of a text; a number and its unit are one word. */
  private static List<String> words(String text) {
    var words = new ArrayList<String>();
    int start = 0;
    for (int at = 0; at < text.length(); at++) {
      if (Character.isWhitespace(text.charAt(at))) {
        int next = at + 1;
        while (Character.isWhitespace(text.charAt(next))) {
          next++;
        }
        if (!UNIT.matcher(text).region(next, text.length()).lookingAt()) {
          words.add(text.substring(start, at));
          start = next;
        }
        at = next - 1;
      }
    }
    words.add(text.substring(start));
    return words;
  }

  /** The lines joined, each indented but the first. */
  static String text(String text, int first, int indent) {
    return String.join("\n" + " ".repeat(indent), lines(text, first, indent));
  }
}
