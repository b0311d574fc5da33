package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * When the launcher makes its archives of classes: with a stand-in for the JVM that only writes down how it was called.
 */
class LauncherTest {

  private static final String JAVA = """
      #!/bin/sh
      echo "$@" >>"$CALLS"
      for word in "$@"; do
        case $word in
          -XX:DumpLoadedClassList=*) echo some >"${word#*=}" ;;
          -XX:SharedArchiveFile=*) case "$*" in *-Xshare:dump*) echo archive >"${word#*=}" ;; esac ;;
          -XX:ArchiveClassesAtExit=*) echo archive >"${word#*=}" ;;
        esac
      done
      """;

  @TempDir
  private Path folder;

  private Path program;

  @BeforeEach
  void buildAProgram() throws IOException {
    program = folder.resolve("one place/rungbook");
    Files.createDirectories(program.resolve("target/quarkus-app/app"));
    Files.createDirectories(program.resolve("target/quarkus-app/lib/main"));
    Files.copy(Path.of("rungbook"), program.resolve("rungbook"));
    Path java = folder.resolve("jdk/bin/java");
    Files.createDirectories(java.getParent());
    Files.writeString(java, JAVA);
    assertTrue(java.toFile().setExecutable(true));
    Files.setLastModifiedTime(java, FileTime.from(Instant.parse("2026-01-01T00:00:00Z")));
    for (String jar : List.of("quarkus-run.jar", "app/rungbook.jar", "lib/main/org.snakeyaml.snakeyaml-engine-3.jar")) {
      Path built = Files.writeString(program.resolve("target/quarkus-app").resolve(jar), "");
      Files.setLastModifiedTime(built, FileTime.from(Instant.parse("2026-01-02T00:00:00Z")));
    }
  }

  /**
   * Runs a command.
   *
   * @return how the JVM was called, one call a line
   */
  private List<String> calls(String... arguments) throws IOException, InterruptedException {
    Path calls = folder.resolve("calls");
    Files.deleteIfExists(calls);
    var command = new java.util.ArrayList<>(List.of("sh", program.resolve("rungbook").toString()));
    command.addAll(List.of(arguments));
    var builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(folder.resolve("out").toFile());
    builder.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
    builder.environment().put("CALLS", calls.toString());
    assertEquals(0, builder.start().waitFor(), () -> out());
    return Files.readAllLines(calls);
  }

  private String out() {
    try {
      return Files.readString(folder.resolve("out"));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static boolean makes(List<String> calls) {
    return calls.stream().anyMatch(call -> call.contains("-Xshare:dump") || call.contains("-XX:ArchiveClassesAtExit="));
  }

  private void moveTo(String place) throws IOException {
    Path to = folder.resolve(place);
    Files.createDirectories(to.getParent());
    Files.move(program, to);
    program = to;
  }

  @Test
  void theFirstCommandMakesTheArchiveAndTheNextUsesIt() throws Exception {
    assertTrue(makes(calls("check", "trees")));
    List<String> next = calls("check", "trees");
    assertEquals(1, next.size(), next.toString());
    assertTrue(
        next.get(0)
            .matches(".*-XX:SharedArchiveFile=\\S.*/target/classes\\S*\\.jsa .*rungbook\\.cli\\.Main check trees"),
        next.toString());
  }

  /** The JVM would silently start without an archive that was made for another class path. */
  @Test
  void aMovedProgramMakesItsArchiveAnewOnce() throws Exception {
    calls("check", "trees");
    moveTo("another place/rungbook");
    assertTrue(makes(calls("check", "trees")));
    assertFalse(makes(calls("check", "trees")));
  }

  @Test
  void aMovedServerMakesItsArchiveAnewOnce() throws Exception {
    assertTrue(makes(calls("serve")));
    assertFalse(makes(calls("serve")));
    moveTo("another place/rungbook");
    assertTrue(makes(calls("serve")));
    assertFalse(makes(calls("serve")));
  }

  @Test
  void aNewBuildMakesItsArchiveAnew() throws Exception {
    calls("check", "trees");
    Files.setLastModifiedTime(program.resolve("target/quarkus-app/app/rungbook.jar"),
        FileTime.from(Instant.now().plusSeconds(60)));
    assertTrue(makes(calls("check", "trees")));
  }
}
