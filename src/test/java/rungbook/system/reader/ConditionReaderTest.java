package rungbook.system.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;

/** A condition names what can be so. */
class ConditionReaderTest {

  private static final String SYSTEM = """
      ---
      title: Bench
      ---

      ```points
      L: at bench
      ground: at bench
      ```

      ```locations
      bench: start
      ```

      ```parts
      supply: supply, 24 V, 0.1 ohm, L to ground
      coil: coil, 24 V, 6 VA, L to ground
      flame: state, when coil on
      ```

      ```sights
      lamp: at bench, when %s
      ```
      """;

  @ParameterizedTest
  @CsvSource({"coil on, ''", "coil humming, ''", "coil, ''", "flame, ''", "flame on, ''", "not flame and coil on, ''",
      "flame humming, unknown-condition", "coil closed, unknown-condition", "x, unknown-condition",
      "coil on and  or flame, unknown-condition"})
  void anUnknownTermIsReported(String condition, String code) {
    var document = DocumentReader.read(new Source("bench.md", SYSTEM.formatted(condition)));
    var problems = SystemReader.read("bench", document).problems();
    assertEquals(code, String.join(", ", problems.stream().map(problem -> problem.code().name()).toList()));
  }
}
