package rungbook.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rungbook.source.Source;
import rungbook.source.Span;

class MarkedLineTest {

  private static MarkedLine marked(String line, String part) {
    Source source = new Source("x.md", line);
    return MarkedLine.of(source, Sample.span(source, part), 40);
  }

  @Test
  void caretsStandUnderTheSpan() {
    assertEquals(new MarkedLine(1, "leads: Q, C", "       ^"), marked("leads: Q, C", "Q"));
  }

  @Test
  void aTabFillsUpToTheNextFourthColumn() {
    assertEquals(new MarkedLine(1, "a   bc", "    ^^"), marked("a\tbc", "bc"));
  }

  @Test
  void aWideCharacterTakesTwoColumnsAndItsCarets() {
    assertEquals(new MarkedLine(1, "- 继电器: x", "  ^^^^^^"), marked("- 继电器: x", "继电器"));
  }

  @Test
  void aCombiningMarkTakesNoColumn() {
    assertEquals("  ^", marked("e\u0301 x", "x").marks());
  }

  @Test
  void aLongLineIsCutAroundTheSpan() {
    MarkedLine line = marked("a".repeat(300) + "HERE" + "b".repeat(300), "HERE");
    assertEquals(40, line.text().length());
    assertTrue(line.text().startsWith("…") && line.text().endsWith("…"));
    assertEquals(line.text().indexOf("HERE"), line.marks().indexOf("^^^^"));
  }

  @Test
  void aSpanLongerThanTheLineIsMarkedAsFarAsItShows() {
    MarkedLine line = marked("x".repeat(100), "x".repeat(100));
    assertTrue(line.marks().length() <= 40);
  }

  @Test
  void anEmptySpanAtTheEndGetsOneCaret() {
    Source source = new Source("x.md", "ab\r\ncd");
    assertEquals(new MarkedLine(2, "cd", "  ^"), MarkedLine.of(source, Span.at(6), 40));
    assertEquals(new MarkedLine(1, "ab", "  ^"), MarkedLine.of(source, Span.at(2), 40));
  }

  @Test
  void charactersThatSteerATerminalAreNotSentToIt() {
    assertFalse(marked("a\u001B[2Jb\u202Ec", "b").text().matches("(?s).*[\\u001B\\u202E].*"));
  }
}
