package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.report.Report;
import rungbook.report.json.ProofJson;
import rungbook.tree.Tree;

/** The load that a meter's text states is in the circuit when a tree is proved with it. */
class MeterLoadTest {

  private static final String METER = "shared/meters/field-meter.md";

  @Test
  void anotherLoadIsAnotherProof() {
    String usual = proof("10 Mohm, ", "10 Mohm, ");
    assertEquals(usual, proof("1 % + 3 digits, 10 Mohm", "1 % + 3 digits, 10000 kohm"));
    assertNotEquals(usual, proof("1 % + 3 digits, 10 Mohm", "1 % + 3 digits, 20 kohm"));
  }

  @Test
  void withoutALoadTheUsualOneIsTaken() {
    assertEquals(proof("10 Mohm, ", "10 Mohm, "), proof("1 % + 3 digits, 10 Mohm", "1 % + 3 digits"));
  }

  private String proof(String stated, String instead) {
    String meter = StarterLibrary.TEXT.texts().get(METER).text();
    LibraryText text = StarterLibrary.with(METER, meter.replace(stated, instead));
    Tree tree = LibraryCompiler.trees(text, LibraryCompiler.sharedAsNeeded(text), "no-cooling-blower-runs"::equals)
        .findFirst()
        .orElseThrow().tree();
    var result = Example.PROVER.prove(tree, text, id -> Optional.empty());
    return ProofJson.of(
        List.of(new ProofJson.Of("tree", result.proved().orElseThrow(), Optional.empty(), Optional.empty())),
        new Report(1, List.of(), List.of()));
  }
}
