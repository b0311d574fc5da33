package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.report.Style;

class ConsoleTest {

  private final StringWriter err = new StringWriter();
  private final Console terminal = new Console(new PrintWriter(new StringWriter()), new PrintWriter(err), Style.PLAIN,
      true,
      Path.of("/home/somebody"), Optional.empty(), Optional.empty());

  @Test
  void aPathBelowTheFolderIsShownRelative() {
    assertEquals("trees/a.md", terminal.shown(Path.of("/home/somebody/trees/a.md")));
    assertEquals("/elsewhere/a.md", terminal.shown(Path.of("/elsewhere/a.md")));
  }

  @Test
  void progressOfLongWorkIsShownAndTakenAwayAgain() throws InterruptedException {
    try (Progress progress = Progress.of(1000, terminal)) {
      progress.step();
      Thread.sleep(800);
      progress.step();
    }
    assertTrue(err.toString().contains("checking: 2 of 1,000 files"), err.toString());
    assertTrue(err.toString().endsWith("\r\u001B[K"), err.toString());
  }
}
