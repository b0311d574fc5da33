package rungbook.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** {@code docs/architecture.md} draws the rooms as the code has them. Rewritten with {@code -Dgolden.write=true}. */
class ArchitectureTest {

  private static final Path PAGE = Path.of("docs/architecture.md");
  private static final String START = "<!-- drawn from the code -->\n";
  private static final String END = "<!-- end of the drawing -->";

  @Test
  void thePageShowsTheRoomsOfTheCode() throws IOException {
    String page = Files.readString(PAGE);
    String drawn = page.substring(0, page.indexOf(START) + START.length()) + "\n"
        + Architecture.of(Program.CLASSES).text()
        + "\n" + page.substring(page.indexOf(END));
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(PAGE, drawn);
    }
    assertEquals(drawn, Files.readString(PAGE), "run the test once with -Dgolden.write=true");
  }
}
