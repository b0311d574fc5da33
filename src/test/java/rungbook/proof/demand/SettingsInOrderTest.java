package rungbook.proof.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.reader.VariantsReader;
import rungbook.tree.Meter;

/** What runs after some settings, one after the other: a limit with a button, a delay, and a stage. */
class SettingsInOrderTest {

  private static final VariantsReader.Read BENCH = VariantsReader.read("bench",
      DocumentReader.read(new Source("shared/systems/bench.md", """
          ---
          title: Bench
          ---

          ```locations
          bench: start
          ```

          ```points
          R: at bench
          A: at bench
          B: at bench
          C: at bench
          ground: at bench
          ```

          ```controls
          call: off, on, at bench
          room: cool, hot, at bench
          moment: settled, trial, stage, at bench
          limit: interlock, at bench
          ```

          ```parts
          supply: supply, 24 V, 0.05 ohm, R to C
          bond: joint, C to ground
          fuse: fuse, 3 A, R to inside feed
          limit: interlock, inside feed to A, closed when room cool, manual reset
          delay: state, when call on, on after 5 min
          call contact: contact, A to B, closed when delay or moment trial
          lamp: load, 24 V, 5 W, B to C
          ```
          """)));

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"call on | true", "call off | false", "moment trial | true",
      "call on, room hot | false", "call on, room hot, room cool | false",
      "call on, room hot, room cool, limit reset button pressed | true",
      "call on, room hot, limit reset button pressed, room cool | false",
      "call on, room hot, room cool, limit reset button not pressed | false",
      "call on, room hot, limit bypassed | true"})
  void theLampIsLitAsTheLastOneLeavesIt(String set, boolean lit) {
    assertEquals(List.of(), BENCH.problems());
    RequestReader.Read read = RequestReader.read(
        new ReadingRequest("", "", "", List.of(set.split(", ", -1)), "", ""), BENCH.systems(), Meter.common());
    assertEquals(List.of(), read.problems());
    ReadingQuestion question = read.question().orElseThrow();
    ReadingAnswer answer = ReadingSolver.of(question.system(), question.fault(), 2).answer(question);
    assertEquals(lit, answer.activity().on().containsKey("lamp"));
  }
}
