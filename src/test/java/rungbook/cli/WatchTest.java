package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class WatchTest {

  @TempDir
  private Path folder;

  @Test
  void checksAgainAfterASaveUntilItIsInterrupted() throws IOException, InterruptedException {
    Path tree = Texts.write(folder.resolve("a.md"), Texts.BROKEN);
    Process watching = Jvm.start(folder, "check", "--watch", ".");
    try (BufferedReader out = watching.inputReader(StandardCharsets.UTF_8)) {
      assertEquals("1 file checked: 1 error", summary(out));
      Files.writeString(tree, Texts.SOUND);
      assertEquals("1 file checked: no problems", summary(out));
      new ProcessBuilder("kill", "-INT", Long.toString(watching.pid())).start().waitFor();
      assertTrue(watching.waitFor(20, TimeUnit.SECONDS));
      assertEquals("", new String(watching.getErrorStream().readAllBytes(), StandardCharsets.UTF_8));
    } finally {
      watching.destroyForcibly();
    }
  }

  /** Reads as far as the line that says it is watching. */
  private static String summary(BufferedReader out) throws IOException {
    String summary = "";
    for (String line = out.readLine(); !line.startsWith("watching"); line = out.readLine()) {
      summary = line;
    }
    return summary;
  }
}
