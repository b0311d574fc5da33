package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each hostile file, checked by a fresh program with 256 MB: a clear problem with its place, soon, and nothing on the
 * error stream.
 */
class HostileTest {

  /** Generous, since machines that test are busy; {@code docs/figures.md} has what was measured. */
  private static final int MOST_SECONDS = 20;

  @TempDir
  private static Path folder;

  @TestFactory
  Stream<DynamicTest> isReportedWithItsPlaceSoonAndInLittleMemory() {
    return Hostile.CASES.stream().map(hostile -> DynamicTest.dynamicTest(hostile.name(), () -> check(hostile)));
  }

  private static void check(Hostile hostile) throws IOException, InterruptedException {
    Path place = Files.createDirectories(folder.resolve(hostile.name().replace(' ', '-')));
    hostile.beside().forEach((name, bytes) -> write(place.resolve(name), bytes));
    write(place.resolve("tree.md"), hostile.bytes());
    Process program = Jvm.start(place, "check", "tree.md");
    String out = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(program.waitFor(MOST_SECONDS, TimeUnit.SECONDS));
    assertEquals("", new String(program.getErrorStream().readAllBytes(), StandardCharsets.UTF_8));
    assertTrue(
        hostile.expected().isEmpty() ? out.equals("1 file checked: no problems\n")
            : out.contains("tree.md:" + hostile.expected() + ":"),
        () -> "expected " + hostile.expected() + " in\n" + out.substring(0, Math.min(3000, out.length())));
    assertTrue(out.length() < 200_000, () -> out.length() + " characters of report");
  }

  private static void write(Path file, byte[] bytes) {
    try {
      Files.createDirectories(file.getParent());
      Files.write(file, bytes);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
