package rungbook.web;

import com.github.difflib.text.DiffRow;
import com.github.difflib.text.DiffRowGenerator;
import java.util.ArrayList;
import java.util.List;

/** What changed between two texts, for reading. */
final class Difference {
  private static final char OPEN = '\uE000';
  private static final char CLOSE = '\uE001';
  private static final DiffRowGenerator WORDS = DiffRowGenerator.create()
      .showInlineDiffs(true).inlineDiffByWord(true).mergeOriginalRevised(false)
      .lineNormalizer(line -> line)
      .oldTag(opens -> String.valueOf(opens ? OPEN : CLOSE)).newTag(opens -> String.valueOf(opens ? OPEN : CLOSE))
      .build();
  private static final int CONTEXT_LINES = 3;

  private Difference() {
  }

  /** How a line stands in the newer text. */
  public enum Kind { SAME, ADDED, TAKEN_OUT, LEFT_OUT }

  /** A stretch of a line; {@code changed} when its words are not in the other text. */
  public record Part(String text, boolean changed) {}

  /** @param before its number in the older text, 0 when not there; {@code after} likewise in the newer */
  public record Line(Kind kind, int before, int after, List<Part> parts) {
    /** The sign that says the kind without colour. */
    public String sign() {
      return switch (kind) {
        case ADDED -> "+";
        case TAKEN_OUT -> "−";
        case SAME, LEFT_OUT -> "";
      };
    }

    public String style() {
      return kind.name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Lines in order; long stretches without a change are one line that says how many were left out. */
  static List<Line> of(String before, String after) {
    return folded(lines(WORDS.generateDiffRows(List.of(before.split("\r?\n", -1)), List.of(after.split("\r?\n", -1)))));
  }

  private static List<Line> lines(List<DiffRow> rows) {
    var lines = new ArrayList<Line>();
    var older = 0;
    var newer = 0;
    var added = new ArrayList<Line>();
    for (var row : rows) {
      if (row.getTag() == DiffRow.Tag.EQUAL) {
        lines.addAll(added);
        added.clear();
        lines.add(new Line(Kind.SAME, ++older, ++newer, parts(row.getOldLine())));
        continue;
      }
      if (row.getTag() != DiffRow.Tag.INSERT) {
        lines.add(new Line(Kind.TAKEN_OUT, ++older, 0, parts(row.getOldLine())));
      }
      if (row.getTag() != DiffRow.Tag.DELETE) {
        added.add(new Line(Kind.ADDED, 0, ++newer, parts(row.getNewLine())));
      }
    }
    lines.addAll(added);
    return lines;
  }

  private static List<Part> parts(String marked) {
    var parts = new ArrayList<Part>();
    var changed = false;
    var start = 0;
    for (var i = 0; i <= marked.length(); i++) {
      var end = i == marked.length() || marked.charAt(i) == OPEN || marked.charAt(i) == CLOSE;
      if (end && i > start) {
        parts.add(new Part(marked.substring(start, i), changed));
      }
      if (end && i < marked.length()) {
        changed = marked.charAt(i) == OPEN;
        start = i + 1;
      }
    }
    return parts;
  }

  private static List<Line> folded(List<Line> lines) {
    var shown = new ArrayList<Line>();
    var skipped = 0;
    for (var i = 0; i < lines.size(); i++) {
      if (isNearChange(lines, i)) {
        skipped = close(shown, skipped);
        shown.add(lines.get(i));
      } else {
        skipped++;
      }
    }
    close(shown, skipped);
    return shown;
  }

  private static int close(List<Line> shown, int skipped) {
    if (skipped > 0) {
      shown.add(new Line(Kind.LEFT_OUT, 0, 0, List.of(new Part(skipped == 1 ? "1 line the same" : skipped + " lines the same", false))));
    }
    return 0;
  }

  private static boolean isNearChange(List<Line> lines, int at) {
    var from = Math.max(0, at - CONTEXT_LINES);
    var to = Math.min(lines.size(), at + CONTEXT_LINES + 1);
    return lines.subList(from, to).stream().anyMatch(line -> line.kind() != Kind.SAME);
  }
}
