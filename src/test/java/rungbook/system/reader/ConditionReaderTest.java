package rungbook.system.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.system.BenchSystem;

/** A condition names what can be so. */
class ConditionReaderTest {

  private static final String BLOCKS = """
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
    var problems = BenchSystem.read("L", BLOCKS.formatted(condition)).problems();
    assertEquals(code, String.join(", ", problems.stream().map(problem -> problem.code().name()).toList()));
  }
}
