package rungbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The whole output of each format. With {@code -Dgolden.write=true} the files are written anew: read the difference.
 */
class GoldenTest {

  private static final Path FOLDER = Path.of("src/test/resources/golden");

  @ParameterizedTest
  @ValueSource(strings = {"text", "json", "sarif"})
  void theReportIsAsItWas(String format) throws IOException {
    Run run = Run.in(FOLDER, "check", "trees", "--format", format);
    Path golden = FOLDER.resolve("report." + format);
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(golden, run.out());
    }
    assertEquals(Files.readString(golden), run.out());
    assertEquals(1, run.exit());
  }
}
