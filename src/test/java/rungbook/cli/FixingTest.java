package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungbook.report.Style;
import rungbook.source.Code;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

class FixingTest {

  private static final Source CHECKED = new Source("a.md", "one two three");

  @TempDir
  private Path folder;

  private final StringWriter said = new StringWriter();

  private int fix(Problem... problems) throws IOException {
    return Fixing.fix(List.of(problems),
        new Console(new PrintWriter(said), new PrintWriter(said), Style.PLAIN, false, folder, Optional.empty(),
            Optional.empty()));
  }

  private static Problem replace(int start, int end, String by) {
    return Problem.at(Code.of("unknown-key"), CHECKED, new Span(start, end))
        .fixedBy(Optional.of(new Fix("write `" + by + "`", List.of(new Edit(CHECKED, new Span(start, end), by)))));
  }

  @Test
  void fixesOfOneFileAreAllMade() throws IOException {
    Files.writeString(folder.resolve("a.md"), CHECKED.text());
    assertEquals(2, fix(replace(8, 13, "3"), replace(0, 3, "eleven")));
    assertEquals("eleven two 3", Files.readString(folder.resolve("a.md")));
  }

  @Test
  void ofTwoFixesOfOnePlaceTheFirstIsMadeAndTheSecondReported() throws IOException {
    Files.writeString(folder.resolve("a.md"), CHECKED.text());
    assertEquals(1, fix(replace(0, 7, "1 2"), replace(4, 7, "2")));
    assertEquals("1 2 three", Files.readString(folder.resolve("a.md")));
    assertTrue(said.toString().contains("a.md:1:5: unknown-key not fixed: another fix changes the same place"),
        said.toString());
  }

  @Test
  void aFileThatHasChangedSinceIsLeftAlone() throws IOException {
    Files.writeString(folder.resolve("a.md"), "one two three!");
    assertEquals(0, fix(replace(0, 3, "1")));
    assertEquals("one two three!", Files.readString(folder.resolve("a.md")));
    assertTrue(said.toString().contains("not fixed: the file has changed since"), said.toString());
  }
}
