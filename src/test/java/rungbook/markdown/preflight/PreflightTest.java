package rungbook.markdown.preflight;

import static java.time.Duration.ofSeconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.markdown.DocumentReader;
import rungbook.source.Problem;
import rungbook.source.Source;

class PreflightTest {

  private static List<String> codes(String text) {
    return DocumentReader.read(new Source("x.md", text)).problems().stream().map(problem -> problem.code().name())
        .distinct().toList();
  }

  @Test
  void refusesDeepNestingAndEndlessParagraphs() {
    assertEquals(List.of("nested-too-deep"), codes("> ".repeat(10_000) + "x\n"));
    assertEquals(List.of("nested-too-deep"), codes("- ".repeat(10_000) + "x\n"));
    assertEquals(List.of("nested-too-deep"), codes(" ".repeat(10_000) + "x\n"));
    assertEquals(List.of("paragraph-too-long"), codes("word ".repeat(10_000) + "\n"));
    assertEquals(List.of("paragraph-too-long"), codes("[".repeat(5_000) + "\n"));
    assertEquals(List.of("paragraph-too-long"),
        codes(Stream.generate(() -> "a **b _c `d\n").limit(1_000).reduce("", String::concat)));
  }

  @Test
  void letsThroughWhatPeopleWrite() {
    assertEquals(List.of(),
        codes("-".repeat(200) + "\n\n> a\n> > b\n\n- x\n  - y\n    - z\n\n" + "word ".repeat(2_000) + "\n"));
  }

  /** Each table costs as much as a page of prose. */
  @Test
  void refusesTablesWithoutEnd() {
    for (String table : List.of("| a | b |\n|---|---|\n| c | d |\n\n", "a | b\n--- | :-:\nc | d\n\n")) {
      assertEquals(List.of(), codes(table.repeat(2_000)));
      assertEquals(List.of("text-too-long"), codes(table.repeat(2_001)));
    }
    assertEquals(List.of(), codes("```text\n" + "|---|\n".repeat(2_001) + "```\n"));
    assertEquals(List.of(), codes("| a |\n|---|\n" + "| b |\n".repeat(3_000)));
  }

  @Test
  void fencedBlocksMayBeLong() {
    assertEquals(List.of(), codes("```text\n" + "a line of a long table of parts\n".repeat(2_000) + "```\n"));
    String endless = "a line of a long table of parts\n".repeat(2_000);
    assertEquals(List.of("paragraph-too-long"), codes("> ```\n\n" + endless));
    assertEquals(List.of("paragraph-too-long"), codes("<!--\n\n```\n-->\n\n" + endless));
    assertEquals(List.of("paragraph-too-long"), codes("```text\n```\n" + endless));
  }

  /** Shapes that are known to stall or overflow Markdown parsers; the number is how often the shape is repeated. */
  @ParameterizedTest
  @ValueSource(strings = {"> ", "- ", "1. ", "* a\n", "> a\n", "[a](", "![", "**a ", "*a _b ", "`", "<!--", "&#", "\\",
      "|a", "```\n", "[a]: b\n", "## a\n",
      "a\n-\n", "  - ", "<a", "![a](b)", "\t", "\u0000", "[^a]"})
  void hostileShapesEndInAMoment(String shape) {
    String text = shape.repeat(50_000);
    assertTimeoutPreemptively(ofSeconds(20), () -> DocumentReader.read(new Source("x.md", text)));
  }
}
