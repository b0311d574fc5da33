package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.proof.advice.Advice;
import rungbook.proof.report.Proof;
import rungbook.report.ProofText;
import rungbook.report.Report;
import rungbook.report.Style;
import rungbook.report.json.ProofJson;
import rungbook.source.Problem;
import rungbook.tree.Tree;

/** A lamp behind a fuse and a contact; in half of the houses, something is different. */
class FormsThatDifferTest {

  private static final String TEXT = """
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
      D: at bench
      ```

      ```controls
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, L1 to N
      fuse: fuse, 5 A, L1 to A
      contact: contact, A to D, %s
      lamp: load, 120 V, 60 W, D to N
      ```

      ```sights
      lit: at bench, when lamp on
      ```

      ```faults
      fuse open: open fuse
      contact stuck: hold contact closed
      lamp open: open lamp
      ```

      ```variants
      other: share 50 %%
      ```

      ```variant other
      %s
      ```
      ~~~~

      `trees/dark.md`

      ~~~~markdown
      ---
      title: Dark
      complaint: The lamp is dark.
      system: lamp
      call: call on
      not seen: lit
      ---

      ## Call

      ```task
      set: call on
      at: bench
      ```

      - done: [Read A](#read-a)

      ## Read A

      ```check
      measure: AC volts
      leads: A, N
      at: bench
      expect: 110 to 130 V
      ```

      - under 60: [Fuse](#fuse)
      - 60 or more: [Bring it in](#bring-it-in)

      ## Fuse

      ```finding
      fault: fuse open
      ```

      ## Bring it in

      ```finding
      refer: the shop
      ```
      ~~~~
      """;

  private static final String ON_CALL = "closed when call on";
  private static final String ALWAYS = "closed when call on or call off";

  private static Library library(String contact, String other) {
    return Example.library(TEXT.formatted(contact, other));
  }

  private static Tree tree(Library library) {
    return library.tree("dark").orElseThrow().tree();
  }

  private static Proof proof(String other) {
    Library library = library(ON_CALL, other);
    return Example.PROVER.prove(tree(library), library.text(), id -> Optional.empty()).proved().orElseThrow();
  }

  private static String text(Proof proof) {
    return ProofText.of(proof, Advice.of(proof, proof.problems()), Optional.empty(), "trees/dark.md",
        Style.PLAIN)
        .replaceAll("\\s+", " ");
  }

  @Test
  void whereNoNamedFaultGivesTheComplaintNothingIsDetected() {
    Proof proof = proof("lamp: load, 120 V, 60 W, L1 to N");
    assertEquals(List.of(1, 0), proof.variants().stream().map(Proof.InVariant::named).toList());
    assertEquals(List.of(2, 1), proof.variants().stream().map(Proof.InVariant::faults).toList(), "the lamp itself");
    assertTrue(text(proof).contains("other 50 % no fault that a finding names gives this complaint, mistaken 0 %"),
        text(proof));
    String json = ProofJson.of(List.of(new ProofJson.Of("trees/dark.md", proof, Optional.empty(), Optional.empty())),
        new Report(1, List.of(), List.of()));
    assertTrue(json.contains("\"named\" : 1,\n          \"detected\" : 1.0"), json);
    assertTrue(json.contains("\"named\" : 0,\n          \"mistaken\" : 0.0"), json);
  }

  @Test
  void whereTheLampStaysLitNoFaultGivesTheComplaint() {
    Proof proof = proof("lamp: load, 120 V, 60 W, L1 to N\nsecond lamp: load, 120 V, 60 W, L1 to N");
    assertEquals(1, proof.variants().get(1).faults());
    assertFalse(text(proof).contains("detected 0 %"));
  }

  /** A contact that is always closed cannot show that it is stuck; one that follows the call can. */
  @ParameterizedTest
  @CsvSource({"true, contact: contact; A to D; closed when call on, false",
      "true, fuse: fuse; 10 A; L1 to A, true", "false, fuse: fuse; 10 A; L1 to A, false"})
  void aFaultThatShowsInOneFormIsNoProblem(boolean isAlwaysClosed, String other, boolean isReported) {
    Library library = library(isAlwaysClosed ? ALWAYS : ON_CALL, other.replace(';', ','));
    List<String> found = Example.PROVER.systemProblems(List.of(tree(library)), library.text()).stream()
        .map((Problem problem) -> problem.code().name() + " " + problem.facts().get("fault")).toList();
    assertEquals(isReported ? List.of("fault-shows-nowhere contact stuck") : List.of(), found);
  }
}
