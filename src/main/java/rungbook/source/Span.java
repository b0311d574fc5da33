package rungbook.source;

/** A stretch of a text, in UTF-16 code units: from {@code start} (included) to {@code end} (not included). */
public record Span(int start, int end) implements Comparable<Span> {

  public Span {
    if (start < 0 || end < start) {
      throw new IllegalArgumentException("no span from " + start + " to " + end);
    }
  }

  public static Span at(int offset) {
    return new Span(offset, offset);
  }

  public int length() {
    return end - start;
  }

  /** The part of this span that starts {@code from} units in and is {@code length} units long. */
  public Span part(int from, int length) {
    return new Span(start + from, start + from + length);
  }

  @Override
  public int compareTo(Span other) {
    int byStart = Integer.compare(start, other.start);
    return byStart != 0 ? byStart : Integer.compare(end, other.end);
  }
}
