package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.proof.report.Proof;

/**
 * A lamp behind a limit with a reset button that a dirty filter has tripped, and behind a board that locks out until
 * the call is off. Worked out by hand: the lamp is lit after the repair only if its cause is gone, and then what it has
 * left behind.
 */
class LatchAfterRepairTest {

  private static final String PAGE = """
      `shared/systems/bench.md`

      ~~~~markdown
      ---
      title: Test bench
      ---

      ```locations
      bench: start
      ```

      ```points
      L1: at bench, 24 V
      N: at bench
      R: at bench
      F: at bench
      G: at bench
      Y: at bench
      ```

      ```controls
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      fuse: fuse, 3 A, L1 to R
      limit: switch, R to F, manual reset
      flame sensor: switch, F to G
      lockout: state, set when call on and flame sensor open, reset when call off
      restart delay: state, when call on, on after 30 s
      call contact: contact, G to Y, closed when restart delay on and not lockout
      lamp: load, 24 V, 6 W, Y to N
      ```

      ```assemblies
      burner box: limit
      ```

      ```sights
      lit: at bench, when lamp on
      ```

      ```faults
      filter dirty: in air filter, hold limit open when lamp on
      sensor dirty: hold flame sensor open
      lamp shorted: short lamp
      ```
      ~~~~

      `trees/dark.md`

      ~~~~markdown
      ---
      title: Dark
      complaint: The lamp is dark.
      system: bench
      ---

      ## Call

      ```task
      set: call on
      at: bench
      wait: 1 min
      ```

      - done: [Light](#light)

      ## Light

      ```check
      look: lit
      at: bench
      ```

      - yes: [Office](#office)
      - no: [Found](#found)

      ## Found

      ```finding
      fault: %s
      ```

      - repair: [Repair](#repair)

      ## Repair

      ```task
      %s
      at: bench
      ```

      - done: [Light again](#light-again)

      ## Light again

      ```check
      look: lit
      at: bench
      ```

      - yes: [Repaired](#repaired)
      - no: [Office](#office)

      ## Repaired

      ```end
      result: repaired and proved
      ```

      ## Office

      ```finding
      refer: the office
      ```
      ~~~~
      """;

  private static Proof.Repair repair(String fault, String lines) {
    Library library = Example.library(PAGE.formatted(fault, lines.replace("; ", "\n")));
    return Example.prove(library.tree("dark").orElseThrow().tree(), library).proved().orElseThrow().repairs().get(0);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "filter dirty | repair: air filter | 0",
      "filter dirty | repair: air filter; reset: limit | 1",
      "filter dirty | reset: limit; repair: air filter | 0",
      "filter dirty | repair: air filter; replace: limit | 1",
      "filter dirty | repair: air filter, limit | 1",
      "filter dirty | repair: air filter; reset: burner box | 1",
      "sensor dirty | repair: flame sensor | 0",
      "sensor dirty | repair: flame sensor; set: call off, call on | 0",
      "sensor dirty | repair: flame sensor; set: call off, call on; wait: 29 s | 0",
      "sensor dirty | repair: flame sensor; set: call off, call on; wait: 30 s | 1",
      "sensor dirty | set: call off, call on; repair: flame sensor; wait: 5 min | 0",
      "lamp shorted | replace: lamp | 0",
      "lamp shorted | replace: lamp, fuse | 1",
      "lamp shorted | replace: fuse, lamp | 0"})
  void theClosingCheckFindsWhatTheFaultHasLeft(String fault, String lines, double passed) {
    assertEquals(passed, repair(fault, lines).passed(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"filter dirty | repair: air filter; reset: limit",
      "sensor dirty | repair: flame sensor; set: call off, call on; wait: 30 s", "lamp shorted | replace: lamp, fuse"})
  void aRepairThatTakesNothingAwayIsNoticed(String fault, String lines) {
    assertEquals(1, repair(fault, lines).noticed(), 1e-9);
  }
}
