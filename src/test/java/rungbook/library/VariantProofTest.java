package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.pack.Pack;
import rungbook.pack.page.Edition;
import rungbook.pack.page.PackInput;
import rungbook.proof.HighestVoltages;
import rungbook.proof.advice.Advice;
import rungbook.proof.report.Proof;
import rungbook.report.ProofText;
import rungbook.report.Style;
import rungbook.source.Problem;
import rungbook.source.Witness;
import rungbook.tree.Tree;

/** A lamp behind two fuses; in a fifth of the houses the second fuse is in the return, and shows elsewhere. */
class VariantProofTest {

  private static final String SYSTEM = """
      `shared/systems/lamp.md`

      ~~~~markdown
      ---
      title: Lamp
      ---

      ```locations
      bench: start
      ```

      ```points
      L1: at bench, 120 V
      N: at bench
      A: at bench
      B: at bench
      D: at bench
      ```

      ```controls
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 120 V, from 114 to 126 V, 0.05 ohm, L1 to N
      first fuse: fuse, 5 A, L1 to A
      second fuse: fuse, 5 A, A to B
      call contact: contact, B to D, closed when call on
      lamp: load, 120 V, 60 W, D to N
      ```

      ```sights
      lit: at bench, when lamp on
      fuse in the return: at bench, when variant fuse in the return
      ```

      ```faults
      first fuse open: open first fuse
      second fuse open: open second fuse
      lamp open: open lamp
      ```

      ```variants
      fuse in the return: share 20 %, about the second fuse is behind the lamp
      ```

      ```variant fuse in the return
      call contact: contact, A to D, closed when call on
      lamp: load, 120 V, 60 W, D to B
      second fuse: fuse, 5 A, B to N
      ```
      ~~~~

      """;

  private static final String TREE = """
      `trees/dark.md`

      ~~~~markdown
      ---
      title: Dark
      complaint: The lamp is dark.
      system: lamp
      %s---

      ## Call

      ```task
      set: call on
      at: bench
      ```

      - done: [%s)

      ## Place

      ```check
      look: fuse in the return
      at: bench
      ```

      - yes: [Second fuse](#second-fuse)
      - no: [Read D](#read-d)

      ## Read D

      ```check
      measure: AC volts
      leads: D, N
      at: bench
      expect: 110 to 130 V
      ```

      - under 60: [Fuses](#fuses)
      - 60 or more: [Lamp](#lamp)

      ## Fuses

      ```finding
      fault: first fuse open, second fuse open
      ```

      ## Lamp

      ```finding
      fault: lamp open
      ```

      ## Second fuse

      ```finding
      refer: an electrician
      ```
      ~~~~
      """;

  private static final String STRAIGHT = "Read D](#read-d";
  private static final String ASKS = "Place](#place";

  private static Library library(String front, String first) {
    return Example.library(SYSTEM + TREE.formatted(front, first));
  }

  private static Tree tree(Library library) {
    return library.tree("dark").orElseThrow().tree();
  }

  private static Proof prove(String front, String first) {
    Library library = library(front, first);
    assertEquals(List.of(), library.found().shown().stream()
        .filter(problem -> problem.code().name().contains("variant")).toList());
    return Example.prove(tree(library), library).proved().orElseThrow();
  }

  private static Optional<Problem> wrongly(Proof proof) {
    return proof.problems().stream().filter(one -> one.code().name().equals("fault-found-wrongly")).findFirst();
  }

  @Test
  void aMistakeOfOneVariantNamesTheVariant() {
    Proof proof = prove("", STRAIGHT);
    Problem wrong = wrongly(proof).orElseThrow();
    assertEquals("second fuse open (19 %, only in the variant fuse in the return)", wrong.facts().get("faults"),
        "3 of 16 houses, and no reading is uncertain");
    assertEquals("fuse in the return", ((Witness.Path) wrong.witness().orElseThrow()).variant());
  }

  @Test
  void eachVariantHasItsLine() {
    Proof proof = prove("", STRAIGHT);
    assertEquals(List.of("", "fuse in the return"), proof.variants().stream().map(Proof.InVariant::name).toList());
    assertEquals(1, proof.variants().get(0).detected(), 1e-9);
    assertEquals(2 / 3.0, proof.variants().get(1).detected(), 1e-9, "two of three equal faults");
    assertEquals(1 / 3.0, proof.variants().get(1).mistaken(), 1e-9);
    assertEquals(List.of("second fuse open"),
        proof.variants().get(1).changed().stream().map(Proof.ChangedFault::fault).toList());
    String text = ProofText.of(proof, Advice.of(proof, proof.problems()), "trees/dark.md", Style.PLAIN)
        .replaceAll("\\s+", " ");
    assertTrue(text.contains("fuse in the return 20 % detected 67 %, mistaken 33 %"), text);
    assertTrue(text.contains("second fuse open (mistaken 100 %)"), text);
  }

  @Test
  void theMeasuresAreThoseOfTheMixture() {
    Proof proof = prove("", STRAIGHT);
    assertEquals((13 + 3 * 2 / 3.0) / 16, proof.claimed().detected(), 1e-9);
  }

  @Test
  void aCheckCanAskWhichVariantItIs() {
    Proof proof = prove("", ASKS);
    assertEquals(Optional.empty(), wrongly(proof));
    assertEquals(0, proof.variants().get(1).mistaken(), 1e-9);
  }

  @Test
  void aVariantThatTheTreeIsNotForIsLeftOut() {
    Proof proof = prove("not for: fuse in the return\n", STRAIGHT);
    assertEquals(Optional.empty(), wrongly(proof));
    assertEquals(1, proof.claimed().detected(), 1e-9);
  }

  @Test
  void thePackSaysWhatTheTreeIsNotFor() {
    assertTrue(page("not for: fuse in the return\n").contains("<p>These pages are not for this equipment:</p>"
        + "<ul><li>fuse in the return: the second fuse is behind the lamp</li>"));
    assertFalse(page("").contains("not for this equipment"));
  }

  private static String page(String front) {
    Library library = library(front, STRAIGHT);
    Pack pack = Pack.of(tree(library), HighestVoltages.unknown(),
        new PackInput(library.shared(), library.text().pictures()), Edition.draft());
    return new String(pack.bytes(), StandardCharsets.UTF_8);
  }
}
