package rungbook.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class SourceTest {

  @Test
  void linesEndInAnyOfTheThreeWays() {
    Source source = new Source("x.md", "one\ntwo\r\nthree\rfour");
    assertEquals(4, source.lineCount());
    assertEquals("two", source.text(source.lineSpan(2)));
    assertEquals("three", source.text(source.lineSpan(3)));
    assertEquals(new Place(4, 1), source.placeAt(source.text().indexOf("four")));
  }

  @Test
  void columnsCountCodePointsAndATabIsOne() {
    Source source = new Source("x.md", "\uD83D\uDD0C\tY at the board");
    assertEquals(new Place(1, 3), source.placeAt(source.text().indexOf('Y')));
  }

  @Test
  void offsetsBeyondTheTextAreAtItsEnd() {
    Source source = new Source("x.md", "ab\ncd");
    assertEquals(new Place(2, 3), source.placeAt(99));
  }

  @Test
  void emptyTextHasOneEmptyLine() {
    Source source = new Source("x.md", "");
    assertEquals(1, source.lineCount());
    assertEquals(new Span(0, 0), source.lineSpan(1));
    assertEquals(new Place(1, 1), source.placeAt(0));
  }

  @Test
  void everyOffsetHasItsOwnPlace() {
    Source source = new Source("x.md", "a\r\n\u00e9\uD83D\uDD0Cb\n\nlast");
    for (int offset = 0; offset <= source.text().length(); offset++) {
      boolean inside = offset > 0 && offset < source.text().length()
          && (Character.isLowSurrogate(source.text().charAt(offset))
              || source.text().charAt(offset) == '\n' && source.text().charAt(offset - 1) == '\r');
      if (!inside) {
        assertEquals(offset, offsetOf(source, source.placeAt(offset)), "offset " + offset);
      }
    }
  }

  private static int offsetOf(Source source, Place place) {
    return source.text().offsetByCodePoints(source.lineSpan(place.line()).start(), place.column() - 1);
  }

  @Test
  void spansRunForward() {
    assertThrows(IllegalArgumentException.class, () -> new Span(3, 2));
    assertEquals(new Span(12, 15), new Span(10, 20).part(2, 3));
  }
}
