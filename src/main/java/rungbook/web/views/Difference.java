package rungbook.web.views;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What changed between two texts, for reading. Its time and its size are bounded: beyond the bounds, it says what is
 * not shown.
 */
public final class Difference {
  private static final int CONTEXT_LINES = 3;
  private static final int MOST_LINES_SHOWN = 10_000;
  private static final int MOST_CHARACTERS_SHOWN = 1 << 20;
  private final List<String> before;
  private final List<String> after;
  private final ChangedWords words = new ChangedWords();
  private final List<Line> shown = new ArrayList<>();
  private int charactersShown;
  private int linesNotShown;

  private Difference(String before, String after) {
    this.before = lines(before);
    this.after = lines(after);
  }

  /** What became of a line in the newer text; a note is a line of neither text. */
  public enum Kind {
    SAME, ADDED, TAKEN_OUT, LEFT_OUT, NOTE
  }

  /** A stretch of a line; {@code changed} when its words are not in the other text. */
  public record Part(String text, boolean changed) {}

  /** @param before its number in the older text, 0 when not there; {@code after} likewise in the newer */
  public record Line(Kind kind, int before, int after, List<Part> parts) {
    /** The sign that says the kind without color. */
    public String sign() {
      return switch (kind) {
        case ADDED -> "+";
        case TAKEN_OUT -> "−";
        case SAME, LEFT_OUT, NOTE -> "";
      };
    }

    public String style() {
      return kind.name().toLowerCase(Locale.ROOT);
    }
  }

  /** Lines in order; long stretches without a change are one line that says how many were left out. */
  public static List<Line> of(String before, String after) {
    return new Difference(before, after).compare();
  }

  private static List<String> lines(String text) {
    var lines = new ArrayList<String>();
    var from = 0;
    for (var end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
      lines.add(text.substring(from, end > from && text.charAt(end - 1) == '\r' ? end - 1 : end));
      from = end + 1;
    }
    lines.add(text.substring(from));
    return lines;
  }

  private List<Line> compare() {
    var blocks = ChangedLines.of(before, after);
    var last = new ChangedLines.Block(0, 0, 0, 0);
    for (var block : blocks) {
      same(last, block.from(), last.lines() == 0 ? 0 : CONTEXT_LINES, CONTEXT_LINES);
      change(block);
      last = block;
    }
    same(last, before.size(), blocks.isEmpty() ? 0 : CONTEXT_LINES, 0);
    if (!words.isComplete()) {
      shown.add(0, note("too many changes to show all of them word by word"));
    }
    if (linesNotShown > 0) {
      shown.add(note("too large to show whole: " + linesNotShown + " more lines; read both revisions"));
    }
    return shown;
  }

  /** The lines between a block and the next; those that are far from both are left out. */
  private void same(ChangedLines.Block block, int end, int near, int nearNext) {
    var left = end - block.to() - near - nearNext;
    if (left <= 0) {
      unchanged(block, block.to(), end);
      return;
    }
    unchanged(block, block.to(), block.to() + near);
    show(new Line(Kind.LEFT_OUT, 0, 0, ChangedWords.plain(left == 1 ? "1 line the same" : left + " lines the same")));
    unchanged(block, end - nearNext, end);
  }

  private void unchanged(ChangedLines.Block behind, int from, int to) {
    for (var line = from; line < to; line++) {
      if (shown.size() >= MOST_LINES_SHOWN) {
        linesNotShown += to - line;
        return;
      }
      show(
          new Line(Kind.SAME, line + 1, line - behind.to() + behind.newTo() + 1, ChangedWords.plain(before.get(line))));
    }
  }

  private void change(ChangedLines.Block block) {
    var added = new ArrayList<Line>();
    for (int line = block.from(), newLine = block.newFrom(); line < block.to() || newLine < block.newTo();
        line++, newLine++) {
      if (shown.size() + added.size() >= MOST_LINES_SHOWN) {
        linesNotShown += Math.max(0, block.to() - line) + Math.max(0, block.newTo() - newLine);
        break;
      }
      var pair = pair(block, line, newLine);
      if (line < block.to()) {
        show(new Line(Kind.TAKEN_OUT, line + 1, 0, pair.before()));
      }
      if (newLine < block.newTo()) {
        added.add(new Line(Kind.ADDED, 0, newLine + 1, pair.after()));
      }
    }
    added.forEach(this::show);
  }

  /**
   * The first changed line of one text goes with the first of the other, and so on; one without a partner is changed
   * whole.
   */
  private ChangedWords.Pair pair(ChangedLines.Block block, int line, int newLine) {
    if (line < block.to() && newLine < block.newTo()) {
      return words.of(before.get(line), after.get(newLine));
    }
    return line < block.to() ? new ChangedWords.Pair(whole(before.get(line)), List.of())
        : new ChangedWords.Pair(List.of(), whole(after.get(newLine)));
  }

  private static List<Part> whole(String line) {
    return line.isEmpty() ? List.of() : List.of(new Part(line, true));
  }

  private void show(Line line) {
    var characters = line.parts().stream().mapToInt(part -> part.text().length()).sum();
    charactersShown += characters;
    if (charactersShown <= MOST_CHARACTERS_SHOWN) {
      shown.add(line);
    } else {
      linesNotShown++;
      charactersShown -= characters;
    }
  }

  private static Line note(String text) {
    return new Line(Kind.NOTE, 0, 0, List.of(new Part(text, false)));
  }
}
