package rungbook.system.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.Terminal;
import rungbook.system.TerminalStrip;

class StripReaderTest {

  private static final String BENCH = """
      ---
      title: Bench
      ---

      ```locations
      bench: start
      roof: walk 2 min
      ```

      ```points
      R: at bench
      C: at bench, roof
      GND: at bench
      ground: at bench
      L1: at bench, 120 V
      ```

      ```strips
      %s
      ```
      """;

  @Test
  void terminalsKeepTheOrderOfTheText() {
    TerminalStrip strip = read("terminals: C, at bench, gnd, R").system().strips().get(0);
    assertEquals(new TerminalStrip("terminals", List.of(at("c"), at("gnd"), at("r"))), strip);
  }

  @Test
  void oneTerminalTwiceOnAStripIsAProblem() {
    assertEquals(List.of("terminal-on-two-strips 19:28"), problems("terminals: at bench, R, C, R"));
  }

  @Test
  void theSamePointAtTwoPlacesIsTwoTerminals() {
    assertEquals(List.of(), problems("terminals: at bench, R, C\nabove: at roof, C"));
  }

  @Test
  void aTerminalElsewhereIsUnknown() {
    assertEquals(List.of("unknown-terminal 19:21"), problems("terminals: at roof, R, C"));
  }

  @Test
  void aStripNeedsAPlace() {
    assertEquals(List.of("strip-without-place 19:1"), problems("terminals: R, C"));
  }

  /** Without parts nobody knows whether the neutral is one. */
  @Test
  void voltagesAreComparedOnlyOnACircuit() {
    assertEquals(List.of(), problems("terminals: at bench, L1, C"));
  }

  private static Terminal at(String point) {
    return new Terminal(point, "bench");
  }

  private static List<String> problems(String strips) {
    return read(strips).problems().stream().map(problem -> problem.code() + " " + problem.place()).toList();
  }

  private static SystemReader.Read read(String strips) {
    return BaseSystem.read("bench",
        DocumentReader.read(new Source("shared/systems/bench.md", BENCH.formatted(strips))));
  }
}
