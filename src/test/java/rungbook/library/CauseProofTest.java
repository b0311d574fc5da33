package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.proof.report.Proof;
import rungbook.source.Problem;
import rungbook.tree.Tree;

/**
 * A lamp that a limit switches off when its filter is dirty. The likelihoods are 3 for the lamp, 5 for the filter and 2
 * for the limit, so every share below is a tenth of a whole number, worked out by hand.
 */
class CauseProofTest {

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
      F: at bench
      Y: at bench
      ```

      ```controls
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 120 V, from 114 to 126 V, 0.05 ohm, inside mains to N
      breaker: breaker, 15 A, inside mains to L1
      limit: switch, L1 to F
      call contact: contact, F to Y, closed when call on
      lamp: load, 120 V, 60 W, Y to N
      ```

      ```sights
      filter dirty: at bench
      light: at bench, off when call off, steady when lamp on, 3 flashes when call on and limit open, 1 flash
      ```

      ```faults
      lamp open: open lamp, likelihood 3
      dirty filter: in air filter, hold limit open when lamp on, show filter dirty, likelihood 5
      limit open: hold limit open, likelihood 2
      ```
      ~~~~

      """;

  private static final String TREE = """
      `trees/dark.md`

      ~~~~markdown
      ---
      title: Dark
      complaint: The lamp is dark.
      system: bench
      call: call on
      %s
      ---

      ## Call

      ```task
      set: call on
      at: bench
      ```

      - done: [Light](#light)

      ## Light

      ```check
      look: light
      at: bench
      with: call on
      ```

      - 3 flashes: [Filter](#filter)
      - 1 flash: [Lamp](#lamp)
      - anything else: [Good](#good)

      ## Filter

      ```check
      look: filter dirty
      at: bench
      ```

      - yes: [Dirty filter](#dirty-filter)
      - no: [Limit](#limit)

      ## Dirty filter

      ```finding
      fault: dirty filter
      ```

      - repair: [New filter](#new-filter)

      ## New filter

      ```task
      replace: %s
      at: bench
      ```

      - done: [Lit](#lit)

      ## Lit

      ```check
      look: light
      at: bench
      ```

      - %s: [Call off](#call-off)
      - anything else: [Call off again](#call-off-again)

      ## Call off

      ```task
      set: call off
      at: bench
      ```

      - done: [Done](#done)

      ## Done

      ```end
      result: repaired and proved
      ```

      ## Call off again

      ```task
      set: call off
      at: bench
      ```

      - done: [Senior](#senior)

      ## Senior

      ```end
      result: referred
      refer: a senior technician
      ```

      ## Limit

      ```finding
      fault: limit open
      refer: a senior technician
      ```

      ## Lamp

      ```finding
      fault: lamp open
      refer: a senior technician
      ```

      ## Good

      ```finding
      healthy: yes
      ```
      ~~~~
      """;

  private static Proof prove(String seen, String replaced, String closing) {
    Library library = Example.library(SYSTEM + TREE.formatted(seen, replaced, closing));
    Tree tree = library.trees().get(0).tree();
    return Example.PROVER.prove(tree, library.text(), id -> Optional.empty()).proved().orElseThrow();
  }

  private static Proof prove() {
    return prove("not seen: light steady", "air filter", "steady");
  }

  private static Proof.Outcome outcome(Proof proof, String fault) {
    return proof.outcomes().stream().filter(one -> one.name().equals(fault)).findFirst().orElseThrow();
  }

  private static List<String> codes(Proof proof) {
    return proof.problems().stream().map(Problem::code).map(Object::toString).toList();
  }

  @Test
  void eachCauseEndsAtItsFinding() {
    Proof proof = prove();
    assertEquals(1, outcome(proof, "dirty filter").found(), 1e-12);
    assertEquals(1, outcome(proof, "limit open").found(), 1e-12);
    assertEquals(1, proof.claimed().detected(), 1e-12);
    assertEquals(List.of(), codes(proof));
  }

  @Test
  void aComplaintMayNameAValue() {
    Proof flashing = prove("seen: light 3 flashes", "air filter", "steady");
    assertEquals(0.7, flashing.complaint().likelihood(), 1e-12, "5 and 2 of 10");
    Proof dark = prove("seen: light 1 flash", "air filter", "steady");
    assertEquals(0.3, dark.complaint().likelihood(), 1e-12, "3 of 10");
  }

  @Test
  void theRightRepairPassesAndTheWrongOneIsNoticed() {
    var repair = prove().repairs().get(0);
    assertEquals(1, repair.passed(), 1e-12);
    assertEquals(1, repair.noticed(), 1e-12);
  }

  /** The filter trips the limit, so a new limit changes nothing. */
  @Test
  void whatTheCauseOpensIsNotWhereItIsRepaired() {
    assertTrue(codes(prove("not seen: light steady", "limit", "steady")).contains("repair-not-passing")
        || prove("not seen: light steady", "limit", "steady").repairs().isEmpty());
  }

  @Test
  void aClosingCheckThatAcceptsTheCodeIsReported() {
    assertTrue(codes(prove("not seen: light steady", "air filter", "3 flashes")).contains("wrong-repair-unnoticed"));
  }
}
