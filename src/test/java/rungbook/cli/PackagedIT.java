package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The launcher and the packaged program, as people start them. */
@Timeout(120)
class PackagedIT {

  private static final Path LAUNCHER = Path.of("rungbook").toAbsolutePath();
  private static final Path GOLDEN = Path.of("src/test/resources/golden");

  @TempDir
  private Path folder;

  private static Run launch(Path launcher, Path from, String... arguments) throws IOException, InterruptedException {
    Process program = start(launcher, from, arguments);
    String out = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    String err = new String(program.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Run(program.waitFor(), out, err);
  }

  private static Process start(Path launcher, Path from, String... arguments) throws IOException {
    return new ProcessBuilder(Stream.concat(Stream.of(launcher.toString()), Stream.of(arguments)).toList())
        .directory(from.toFile()).start();
  }

  @ParameterizedTest
  @ValueSource(strings = {"text", "json", "sarif"})
  void theReportIsTheSameAsInTheTests(String format) throws IOException, InterruptedException {
    Run run = launch(LAUNCHER, GOLDEN, "check", "trees", "--format", format);
    String golden = Files.readString(GOLDEN.resolve("report." + format)).replace("\"version\" : \"unpackaged\"",
        "\"version\" : \"0.1.0\"");
    assertEquals(new Run(1, golden, ""), run);
  }

  @Test
  void itStartsThroughALinkFromAnywhere() throws IOException, InterruptedException {
    Path link = Files.createSymbolicLink(folder.resolve("linked"), LAUNCHER);
    Texts.write(folder.resolve("a.md"),
        Texts.SOUND.replace("look: status light\n", "look: status light\ncautions: moving blower\n"));
    assertEquals(new Run(0, "1 file checked: no problems\n", ""), launch(link, folder, "check", "a.md"));
  }

  @Test
  void misuseEndsWithTwo() throws IOException, InterruptedException {
    assertEquals(2, launch(LAUNCHER, folder, "serve", "--prot", "1").exit());
    assertEquals(2, launch(LAUNCHER, folder, "check", "gone.md").exit());
  }

  @Test
  void theStarterLibraryBecomesPacks() throws IOException, InterruptedException {
    Run run = launch(LAUNCHER, folder, "pack", Path.of("trees").toAbsolutePath().toString(), "--to", "out");
    assertEquals(0, run.exit(), run.toString());
    assertTrue(Files.isRegularFile(folder.resolve("out/index.html")));
    assertEquals(0, launch(LAUNCHER, folder, "verify", "out/no-cooling-blower-runs.html").exit());
  }

  @Test
  void theServerStartsPrintsItsAddressAndStops() throws IOException, InterruptedException {
    int port = freePort();
    Process server = start(LAUNCHER, folder, "serve", "--port", Integer.toString(port), "--data", "kept");
    try (BufferedReader out = server.inputReader(StandardCharsets.UTF_8)) {
      String address = "http://127.0.0.1:" + port;
      String line = out.readLine();
      while (line != null && !line.contains(address)) {
        line = out.readLine();
      }
      assertTrue(line != null, "it ended without an address");
      assertEquals(200, ((HttpURLConnection) URI.create(address + "/").toURL().openConnection()).getResponseCode());
      assertTrue(Files.isDirectory(folder.resolve("kept")));
      server.destroy();
      assertTrue(server.waitFor(30, TimeUnit.SECONDS));
    } finally {
      server.destroyForcibly();
    }
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }
}
