package rungbook.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungbook.source.Source;

class SlugTest {

  @Test
  void isWhatCommonViewersMake() {
    assertEquals("y-at-the-board", Slug.of("Y at the board"));
    assertEquals("24-v-at-c", Slug.of("24 V at C?"));
    assertEquals("heat--cool", Slug.of("Heat / Cool"));
    assertEquals("l1-l2", Slug.of(" L1-L2 "));
  }

  @Test
  void keepsLettersOfEveryScript() {
    assertEquals("\u043f\u0440\u043e\u0432\u043e\u0434-y", Slug.of("\u041f\u0440\u043e\u0432\u043e\u0434 Y"));
    assertEquals("\u63a5\u89e6\u5668", Slug.of("\u63a5\u89e6\u5668"));
    assertEquals("\u0915\u093f\u0924\u093e\u092c", Slug.of("\u0915\u093f\u0924\u093e\u092c"));
    assertEquals("t\u00fcr", Slug.of("T\u00fcr!"));
  }

  @Test
  void emphasisCodeLinksAndEntitiesLeaveOnlyTheirWords() {
    String text = "## **Y** at `the` [board](x.md)\n\n## R \\& C\n\n## Tom &amp; Jerry\n\nSetext\n------\n";
    assertEquals("y-at-the-board | r--c | tom--jerry | setext",
        DocumentReader.read(new Source("x.md", text)).sections().stream()
            .map(Section::slug).collect(Collectors.joining(" | ")));
  }
}
