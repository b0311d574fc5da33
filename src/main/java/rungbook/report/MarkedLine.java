package rungbook.report;

import rungbook.source.Place;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * The source line of a span, and the carets below it: tabs as spaces, wide characters as two columns, a long line cut
 * around the span.
 *
 * @param number the line number, from 1
 * @param text the displayed part of the line
 * @param marks spaces and carets, up to the last caret
 */
record MarkedLine(int number, String text, String marks) {

  private static final int TAB = 4;
  private static final String CUT = "…";

  /** @param most columns for the text */
  static MarkedLine of(Source source, Span span, int most) {
    Place place = source.placeAt(span.start());
    Span line = source.lineSpan(place.line());
    int start = Math.min(span.start(), line.end());
    Cells cells = new Cells(source.text(line), start - line.start(),
        Math.max(start, Math.min(span.end(), line.end())) - line.start());
    return cells.cut(place.line(), most);
  }

  /** A line laid out in columns. */
  private static final class Cells {

    private final StringBuilder shown = new StringBuilder();
    private int column;
    private int markStart;
    private int markEnd;

    Cells(String line, int from, int to) {
      for (int i = 0; i < line.length();) {
        markStart = i == from ? column : markStart;
        markEnd = i == to ? column : markEnd;
        int codePoint = line.codePointAt(i);
        add(codePoint);
        i += Character.charCount(codePoint);
      }
      markStart = from == line.length() ? column : markStart;
      markEnd = Math.max(to == line.length() ? column : markEnd, markStart + 1);
    }

    private void add(int codePoint) {
      if (codePoint == '\t') {
        int spaces = TAB - column % TAB;
        shown.append(" ".repeat(spaces));
        column += spaces;
      } else {
        int printable = Columns.printable(codePoint);
        shown.appendCodePoint(printable);
        column += Columns.of(printable);
      }
    }

    MarkedLine cut(int number, int most) {
      if (column <= most) {
        return new MarkedLine(number, shown.toString(), marks(0, 0, most));
      }
      int room = most - 2;
      int before = Math.max(0, room - (markEnd - markStart)) / 2;
      int from = Math.max(0, Math.min(markStart - before, column - room));
      String left = from > 0 ? CUT : "";
      String right = from + room < column ? CUT : "";
      return new MarkedLine(number, left + between(from, from + room) + right, marks(from, left.length(), room));
    }

    private String marks(int from, int shift, int room) {
      int start = markStart - from;
      int end = Math.max(start + 1, Math.min(markEnd - from, room));
      return " ".repeat(shift + start) + "^".repeat(end - start);
    }

    /** The characters in a range of columns; a wide character cut in half becomes a space. */
    private String between(int from, int to) {
      var part = new StringBuilder();
      int at = 0;
      for (int codePoint : shown.codePoints().toArray()) {
        int width = Columns.of(codePoint);
        if (at >= from && at + width <= to) {
          part.appendCodePoint(codePoint);
        } else if (at < from && at + width > from) {
          part.append(' ');
        }
        at += width;
      }
      return part.toString();
    }
  }
}
