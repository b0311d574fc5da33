package rungbook.proof.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.markdown.DocumentReader;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Wording;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.system.reader.VariantsReader;
import rungbook.tree.Meter;

/** Which words a request may use, and what it is told of others. */
class RequestReaderTest {

  private static final SystemVariants BENCH = VariantsReader.read("bench",
      DocumentReader.read(new Source("shared/systems/bench.md", """
          ---
          title: Bench
          ---

          ```locations
          bench: start, panel lid
          shed: walk 1 min
          ```

          ```points
          Y: at bench, shed
          C: at bench
          ```

          ```controls
          call: off, cooling, at bench
          door switch: interlock, at bench
          main switch: isolates power, at bench
          ```

          ```quantities
          temperature rise: temperature difference, at bench, 40 to 70 F
          ```

          ```faults
          lamp open: likelihood 1
          ```
          """))).systems();

  private static RequestReader.Read read(String at, String leads, String set, String fault, String quantity) {
    return RequestReader.read(new ReadingRequest("", at, leads, set.isEmpty() ? List.of() : List.of(set), fault,
        quantity), BENCH, Meter.common());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
      "bensh | Y, C | \"\" | \"\" | \"\" | unknown-location | bench",
      "bench | Y, CC | \"\" | \"\" | \"\" | unknown-point | C",
      "shed | Y, C | \"\" | \"\" | \"\" | point-elsewhere | \"\"",
      "\"\" | Y, C | \"\" | \"\" | \"\" | place-missing | \"\"",
      "bench | Y | \"\" | \"\" | \"\" | leads-count | \"\"",
      "bench | Y, Y | \"\" | \"\" | \"\" | leads-same | \"\"",
      "bench | Y, C | cal cooling | \"\" | \"\" | unknown-control | call cooling",
      "bench | Y, C | call coling | \"\" | \"\" | unknown-position | cooling",
      "bench | Y, C | door switch byassed | \"\" | \"\" | unknown-position | bypassed",
      "bench | Y, C | \"\" | lamp opn | \"\" | unknown-fault | lamp open",
      "bench | Y, C | \"\" | \"\" | AC vols | unknown-quantity | AC volts",
      "bench | Y, C | \"\" | \"\" | temprature rise | unknown-quantity | temperature rise"})
  void anUnknownNameGetsItsProblem(String at, String leads, String set, String fault, String quantity, String code,
      String nearest) {
    RequestReader.Read read = read(at, leads, set, fault, quantity);
    assertTrue(read.question().isEmpty());
    Problem problem = read.problems().get(0);
    assertEquals(code, problem.code().name());
    assertEquals(nearest, problem.facts().getOrDefault("near", ""));
    assertTrue(Wording.of(problem).sentence(problem).indexOf('{') < 0, "every blank is filled");
    assertTrue(Wording.of(problem).hint(problem).indexOf('{') < 0, "every blank is filled");
  }

  @Test
  void aLeadMaySayItsOwnPlace() {
    ReadingQuestion question = read("", "Y at shed, C", "", "", "").question().orElseThrow();
    assertEquals(List.of(new Terminal("y", "shed"), new Terminal("c", "bench")), question.leads());
  }

  @Test
  void settingsAreControlsSwitchesInterlocksAndPanels() {
    List<String> set = List.of("call cooling", "door switch bypassed", "main switch off", "lid open");
    ReadingQuestion question = RequestReader.read(new ReadingRequest("", "", "", set, "", ""), BENCH, Meter.common())
        .question().orElseThrow();
    assertEquals("cooling", question.state().positions().get("call"));
    assertTrue(question.state().bypassed().contains("door switch"));
    assertTrue(question.state().off().contains("main switch"));
    assertTrue(question.state().open().contains("lid"));
    assertEquals(set, question.settings());
  }

  @Test
  void aSettingAsAtTheStartChangesNothing() {
    assertEquals(List.of(), read("", "", "door switch in place", "", "").question().orElseThrow().settings());
  }
}
