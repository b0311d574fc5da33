package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each hostile file, checked with 256 MB: a clear problem with its place, soon, and nothing on the error stream. One
 * program checks them all, so that what a file leaves behind is felt by the next; a few also get a fresh program.
 */
class HostileTest {

  /** Generous, since machines that test are busy; {@code docs/figures.md} has what was measured. */
  private static final int MOST_SECONDS = 20;

  /** The largest file, the one that grows most when it is read, and one that is sound. */
  private static final Set<String> FRESH = Set.of("10 MB", "alias bomb", "byte order mark");

  private static final int ENOUGH_SECONDS = MOST_SECONDS * Hostile.CASES.size();

  @TempDir
  private static Path folder;

  @TestFactory
  Stream<DynamicTest> isReportedWithItsPlaceSoonAndInLittleMemory() throws IOException, InterruptedException {
    List<Path> places = Hostile.CASES.stream().map(HostileTest::write).toList();
    Path said = folder.resolve("said");
    Process program = Jvm.start(folder, ChecksInOne.class, places.stream().map(Path::toString).toArray(String[]::new));
    Files.copy(program.getErrorStream(), said);
    assertTrue(program.waitFor(ENOUGH_SECONDS, TimeUnit.SECONDS));
    assertEquals("", Files.readString(said));
    return Hostile.CASES.stream().map(hostile -> DynamicTest.dynamicTest(hostile.name(), () -> check(hostile)));
  }

  @TestFactory
  Stream<DynamicTest> isReportedByAFreshProgram() {
    return Hostile.CASES.stream().filter(hostile -> FRESH.contains(hostile.name()))
        .map(hostile -> DynamicTest.dynamicTest(hostile.name(), () -> checkAfresh(hostile)));
  }

  private static void check(Hostile hostile) throws IOException {
    Path place = place(hostile);
    assertTrue(Long.parseLong(Files.readString(place.resolve("millis"))) < 1000 * MOST_SECONDS);
    check(hostile, Files.readString(place.resolve("out")), Files.readString(place.resolve("err")));
  }

  private static void checkAfresh(Hostile hostile) throws IOException, InterruptedException {
    Process program = Jvm.start(write(hostile), "check", "tree.md");
    String out = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(program.waitFor(MOST_SECONDS, TimeUnit.SECONDS));
    check(hostile, out, new String(program.getErrorStream().readAllBytes(), StandardCharsets.UTF_8));
  }

  private static void check(Hostile hostile, String out, String err) {
    assertEquals("", err);
    assertTrue(
        hostile.expected().isEmpty() ? out.equals("1 file checked: no problems\n")
            : out.contains("tree.md:" + hostile.expected() + ":"),
        () -> "expected " + hostile.expected() + " in\n" + out.substring(0, Math.min(3000, out.length())));
    assertTrue(out.length() < 200_000, () -> out.length() + " characters of report");
  }

  private static Path place(Hostile hostile) {
    return folder.resolve(hostile.name().replace(' ', '-'));
  }

  private static Path write(Hostile hostile) {
    Path place = place(hostile);
    hostile.beside().forEach((name, bytes) -> write(place.resolve(name), bytes));
    write(place.resolve("tree.md"), hostile.bytes());
    return place;
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
