package rungbook.system.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.source.Wording;

/** Lines of sights with values, and lines of faults that show something: what is wrong with them, and where. */
class SightReaderTest {

  private static final String TEXT = """
      ---
      title: Bench
      ---

      ```locations
      bench: start
      hall: walk 1 min
      ```

      ```points
      R: at bench
      C: at bench
      B: at bench
      ```

      ```parts
      supply: supply, 24 V, 0.1 ohm, R to C
      limit: switch, R to B
      lamp: load, 24 V, 6 VA, B to C
      ```

      ```sights
      %s
      ```

      ```faults
      %s
      ```
      """;

  private static List<String> problems(String sight, String fault) {
    SystemReader.Read read = BaseSystem.read("bench",
        DocumentReader.read(new Source("shared/systems/bench.md", TEXT.formatted(sight, fault))));
    return read.problems().stream().map(one -> one.code() + " " + one.source().text(one.span())).toList();
  }

  private static final String LIGHT = "light: at bench, off when not lamp on, code, steady when lamp on";

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      light: at bench, off, on when lamp on                       |
      light: bench, hall, off, on when lamp on                    |
      light: off, on                                              |
      light: at bench, off, on, off when lamp on                  | sight-values off when lamp on
      light: at bench, off, OFF                                   | sight-values OFF
      light: at bench, off when lamp on, on when limit open       | sight-values light
      light: at bench, off, on, when lamp on                      | sight-values when lamp on
      light: at bench, lamp on                                    | sight-values lamp on
      light: at bench, yes, no when lamp on                       | sight-values yes
      light: at bench, any, off                                   | sight-values any
      light: at bench, off, on when lmap on                       | unknown-condition on when lmap on
      light: at bench, off, on when                               | unknown-condition on when
      light: at bench, , off                                      | sight-values
      """)
  void valuesAreInspected(String sight, String expected) {
    assertEquals(expected == null ? List.of() : List.of(expected.strip()),
        problems(sight, "bad: open lamp").stream().map(String::strip).toList());
  }

  @Test
  void tooManyValuesAreRefused() {
    String many = IntStream.range(0, 65).mapToObj(i -> "code " + i).collect(Collectors.joining(", "));
    assertEquals(List.of("sight-values code 0"), problems("light: at bench, " + many, "bad: open lamp"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      in air filter, hold limit open when lamp on, likelihood 2   |
      show light code                                             |
      hide light steady when lamp on                              |
      show light cod                                              | unknown-value show light cod
      show light                                                  | unknown-value show light
      show lihgt                                                  | unknown-sight show lihgt
      hold limit open when lmap on                                | unknown-condition hold limit open when lmap on
      hold limmit open when lamp on                               | fault-without-part hold limmit open when lamp on
      hold lamp open when lamp on                                 | effect-not-for-part hold lamp open when lamp on
      in air filter, likelihood 2                                 | fault-without-effect bad
      open lamp, likelihood 5 to 2                                | likelihood-unreadable likelihood 5 to 2
      open lamp, likelihood 2 to 5                                | likelihood-unreadable likelihood 2 to 5
      open lamp, likelihood 2, likelihood 3                       | likelihood-unreadable likelihood 3
      open lamp, likelihood 5 %                                   | likelihood-unreadable likelihood 5 %
      open lamp, likelihood NaN                                   | likelihood-unreadable likelihood NaN
      open lamp, likelihood                                       | likelihood-unreadable likelihood
      open lamp, likelihood 0                                     | absurd-quantity likelihood 0
      open lamp, likelihood -1                                    | absurd-quantity likelihood -1
      open lamp, likelihood 10000000                              | absurd-quantity likelihood 10000000
      """)
  void causesAreInspected(String fault, String expected) {
    assertEquals(expected == null ? List.of() : List.of(expected), problems(LIGHT, "bad: " + fault));
  }

  @Test
  void aHugeLikelihoodIsRefused() {
    String many = "likelihood " + "9".repeat(400);
    assertEquals(List.of("absurd-quantity " + many), problems(LIGHT, "bad: open lamp, " + many));
  }

  @Test
  void aMisspelledValueHasAFix() {
    var read = BaseSystem.read("bench", DocumentReader.read(
        new Source("shared/systems/bench.md", TEXT.formatted(LIGHT, "bad: show light stedy"))));
    var problem = read.problems().get(0);
    assertEquals("write `steady`", problem.fix().orElseThrow().label());
    assertEquals("`stedy` is not a value of the sight `light`", Wording.of(problem).sentence(problem));
  }
}
