package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungbook.library.solving.Prover;
import rungbook.proof.report.Proof;
import rungbook.source.Problem;

/**
 * A burner whose temperature rise says whether the filter is dirty. A rise is drawn evenly from its range, and the
 * thermometers show it within ±2 °F. So the shares are areas of trapezoids, worked out by hand beside each check.
 */
class QuantityProofTest {

  private static final int DRAWN = 4_096;

  private static final Prover PROVER = new Prover(DRAWN);

  private static final String SYSTEM = """
      `shared/systems/bench.md`

      ~~~~markdown
      ---
      title: Test bench
      ---

      ```locations
      bench: start
      ```

      ```points
      L1: at bench, 120 V
      N: at bench
      Y: at bench
      ```

      ```controls
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 120 V, from 114 to 126 V, 0.05 ohm, inside mains to N
      breaker: breaker, 15 A, inside mains to L1
      call contact: contact, L1 to Y, closed when call on
      burner: load, 120 V, 60 W, Y to N
      ```

      ```quantities
      temperature rise: temperature difference, at bench, 40 to 70 F when burner on%s
      ```

      ```faults
      burner open: open burner, likelihood 3
      dirty filter: in air filter, show temperature rise 66 to 96 F when burner on, likelihood 5
      ```

      ```variants
      high rise: share 25 %%
      ```

      ```variant high rise
      burner: load, 120 V, 80 W, Y to N
      ```

      ```variant high rise, quantities
      temperature rise: temperature difference, at bench, 55 to 70 F when burner on%s
      ```
      ~~~~

      """;

  private static final String TREE = """
      `trees/warm.md`

      ~~~~markdown
      ---
      title: Warm
      complaint: It gets too warm.
      system: bench
      meter: clamp-meter
      ---

      ## Call

      ```task
      set: call on
      at: bench
      ```

      - done: [Rise](#rise)

      ## Rise

      ```check
      measure: temperature rise
      at: bench
      with: call on
      expect: 40 to 70 F
      ```

      - under 38: [Burner](#burner)
      - 38 to 70: [Good](#good)
      - over 70: [Dirty filter](#dirty-filter)

      ## Burner

      ```finding
      fault: burner open
      refer: a senior technician
      ```

      ## Dirty filter

      ```finding
      fault: dirty filter
      refer: a senior technician
      ```

      ## Good

      ```finding
      healthy: yes
      ```
      ~~~~
      """;

  private static Proof prove(String rest) {
    Library library = Example.library(SYSTEM.formatted(rest, rest) + TREE);
    assertEquals(List.of(), library.found().shown());
    return PROVER.prove(library.trees().get(0).tree(), library.text(), id -> Optional.empty()).proved().orElseThrow();
  }

  private static Proof.Outcome outcome(Proof proof, String fault) {
    return proof.outcomes().stream().filter(one -> one.name().equals(fault)).findFirst().orElseThrow();
  }

  /** 70 and 70.1 part at 70.05. From 66, with an error that is even about zero: (70.05 − 66) / 30. */
  @Test
  void aFaultGoesTheWrongWayAsOftenAsItsRangeSays() {
    Proof proof = prove(", 0 F");
    double healthy = (70.05 - 66) / 30;
    assertEquals(healthy, simulated(66, 96), 2e-3, "the hand figure against a plain simulation");
    assertEquals(healthy, outcome(proof, "dirty filter").healthy(), 0.02, "three standard deviations");
    assertEquals(1, outcome(proof, "burner open").found(), 1e-12, "0 F is never over 2 F");
    assertTrue(proof.unmodeled().isEmpty());
  }

  /** The triangle of good units above 70.05: 1.95² / 2 / 4 over the width; 30 °F in the base, 15 °F in the variant. */
  @Test
  void aGoodUnitIsTakenForAFaultAsOftenAsItsRangeSays() {
    double triangle = 1.95 * 1.95 / 2 / 4;
    double condemned = 0.75 * triangle / 30 + 0.25 * triangle / 15;
    assertEquals(triangle / 30, 1 - simulated(40, 70), 2e-3);
    assertEquals(condemned, prove(", 0 F").falseAlarmShare(), 0.008, "three standard deviations");
  }

  /** Of a million units, each with its own rise and its own error, those that are shown at 70 or less. */
  private static double simulated(double low, double high) {
    var random = new Random(4);
    int below = 0;
    for (int i = 0; i < 1_000_000; i++) {
      double shown = low + (high - low) * random.nextDouble() + 4 * random.nextDouble() - 2;
      below += Math.round(10 * shown) <= 700 ? 1 : 0;
    }
    return below / 1e6;
  }

  /** Nothing is stated for a burner that is off, so there is no number, and no answer takes it. */
  @Test
  void withoutARangeThereIsNoReading() {
    Proof proof = prove("");
    assertEquals(1, outcome(proof, "burner open").nothing(), 1e-12);
    assertTrue(proof.problems().stream().map(Problem::code).anyMatch(code -> code.toString().equals("answer-lacking")));
  }
}
