package rungbook.source;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A named text. The only class that converts offsets to lines and columns. */
public final class Source {

  private final String name;
  private final String text;
  private volatile int @Nullable [] lineStarts;

  /**
   * @param name the file's path for display, with forward slashes
   * @param text the whole text; lines end in LF, CRLF or CR
   */
  public Source(String name, String text) {
    this.name = name;
    this.text = text;
  }

  public String name() {
    return name;
  }

  public String text() {
    return text;
  }

  public String text(Span span) {
    return text.substring(span.start(), span.end());
  }

  public Place placeAt(int offset) {
    int line = lineIndexAt(offset);
    int column = text.codePointCount(lineStarts()[line], Math.min(offset, text.length()));
    return new Place(line + 1, column + 1);
  }

  /**
   * The span of a line without its line ending.
   *
   * @param line counted from 1
   */
  public Span lineSpan(int line) {
    int[] starts = lineStarts();
    int start = starts[line - 1];
    int end = line < starts.length ? starts[line] : text.length();
    while (end > start && isLineEnd(text.charAt(end - 1))) {
      end--;
    }
    return new Span(start, end);
  }

  public int lineCount() {
    return lineStarts().length;
  }

  private int lineIndexAt(int offset) {
    int found = Arrays.binarySearch(lineStarts(), offset);
    return found >= 0 ? found : -found - 2;
  }

  private int[] lineStarts() {
    int[] starts = lineStarts;
    if (starts == null) {
      starts = findLineStarts(text);
      lineStarts = starts;
    }
    return starts;
  }

  private static int[] findLineStarts(String text) {
    int[] starts = new int[64];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      if (endsLine(text, i)) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, count * 2);
        }
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }

  private static boolean endsLine(String text, int i) {
    char c = text.charAt(i);
    return c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }

  @Override
  public String toString() {
    return name;
  }
}
