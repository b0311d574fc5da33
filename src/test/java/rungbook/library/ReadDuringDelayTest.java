package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The example of the page: a lamp that stays lit for 90 s, changed in a line at a time. */
class ReadDuringDelayTest {

  private static final Path PAGE = Path.of("docs/rules/read-during-delay.md");

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "set: call off | set: call off | true",
      "set: call off | set: call off; wait: 89 s | true",
      "set: call off | set: call off; wait: 90 s | false",
      "look: lamp lit | look: lamp lit; lasts: 30 s | false",
      "off after 90 s | off after 3 min | true",
      "off after 90 s | on after 90 s | false"})
  void warnsWhereAGoodUnitAnswersOtherwiseLater(String line, String lines, boolean warns) throws IOException {
    String page = Example.under("Bad", Files.readString(PAGE)).replace(line, lines.replace("; ", "\n"));
    Library library = Example.library(page);
    assertEquals(warns ? List.of("read-during-delay") : List.of(),
        Example.prove(library.tree("example").orElseThrow().tree(), library).problems().stream()
            .map(problem -> problem.code().name()).toList());
  }
}
