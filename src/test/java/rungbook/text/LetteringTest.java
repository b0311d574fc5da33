package rungbook.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LetteringTest {

  @Test
  void longWordsAreBrokenAndLongTextsShortened() {
    var lines = Lettering.wrap("a ".repeat(5) + "W".repeat(100), 15, 100, 3);
    assertEquals(3, lines.size());
    assertTrue(lines.get(2).endsWith("…"));
    assertTrue(lines.stream().allMatch(line -> Lettering.width(line, 15) <= 100));
  }
}
