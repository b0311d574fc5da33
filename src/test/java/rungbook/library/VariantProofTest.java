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
import rungbook.proof.CircuitFacts;
import rungbook.proof.advice.Advice;
import rungbook.proof.report.Proof;
import rungbook.report.ProofText;
import rungbook.report.Style;
import rungbook.source.Problem;
import rungbook.source.Witness;
import rungbook.tree.Tree;

/** What a proof says of variants, on {@link TwoFuses}. */
class VariantProofTest {

  private static final String STRAIGHT = "Read D](#read-d";
  private static final String ASKS = "Place](#place";

  private static Library library(String front, String first) {
    return Example.library(fence(TwoFuses.SYSTEM_PATH, TwoFuses.SYSTEM)
        + fence(TwoFuses.TREE_PATH, TwoFuses.tree(front, first)));
  }

  private static String fence(String path, String text) {
    return "`" + path + "`\n\n~~~~markdown\n" + text + "~~~~\n\n";
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
    String text = ProofText.of(proof, Advice.of(proof, proof.problems()), Optional.empty(), "trees/dark.md",
        Style.PLAIN)
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
    Pack pack = Pack.of(tree(library), CircuitFacts.unknown(),
        new PackInput(library.shared(), library.text().pictures()), Edition.draft());
    return new String(pack.bytes(), StandardCharsets.UTF_8);
  }
}
