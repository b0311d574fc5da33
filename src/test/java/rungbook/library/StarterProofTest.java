package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.library.solving.Prover;
import rungbook.proof.report.Proof;
import rungbook.source.Problem;
import rungbook.source.Wording;

/** The starter trees find what they claim, and the proof notices when one is spoiled. */
@Tag("slow")
class StarterProofTest {

  private static final Library LIBRARY = StarterLibrary.LIBRARY;
  private static final String BLANK = "nothing-runs-thermostat-blank";
  private static final String PATH = "trees/" + BLANK + ".md";

  static List<String> trees() {
    return StarterProofs.ids();
  }

  @ParameterizedTest
  @MethodSource("trees")
  void treeFindsWhatItClaims(String id) {
    Proof proof = StarterProofs.of(id);
    assertTrue(proof.claimed().detected() >= 0.95, () -> id + " detects " + proof.claimed().detected());
    assertTrue(proof.claimed().isolatedTo(2) >= 0.85, () -> id + " isolates " + proof.claimed().isolatedTo(2));
    assertEquals(0, proof.falseAlarmShare());
    assertEquals(List.of(), codes(proof).filter(code -> code.equals("healthy-condemned")).toList());
  }

  @ParameterizedTest
  @MethodSource("trees")
  void everyCaseEndsSomewhere(String id) {
    for (Proof.Outcome outcome : StarterProofs.of(id).outcomes()) {
      double sum = outcome.found() + outcome.mistaken() + outcome.healthy() + outcome.referred() + outcome.handedOn()
          + outcome.nothing();
      assertEquals(1, sum, 1e-9, outcome.name());
    }
  }

  @Test
  void secondProofSaysTheSame() {
    assertEquals(StarterProofs.of(BLANK).endings(),
        StarterProofs.prove(new Prover(StarterProofs.DRAWN), LIBRARY, BLANK).endings());
  }

  @Test
  void limitMovedFrom20To26VoltsCondemnsHealthySystemsAndSaysAtWhichSupply() {
    Library spoiled = with(text -> text.replace("- 20 or more", "- 26 or more").replace("- under 20", "- under 26"));
    List<Problem> problems = StarterProofs.prove(spoiled, BLANK).problems();
    Problem unsound = problems.stream()
        .filter(problem -> problem.facts().getOrDefault("fault", "").equals("healthy systems")).findFirst()
        .orElseThrow(() -> new AssertionError(problems.stream().map(problem -> problem.code().name()).toList()));
    String sentence = Wording.of(unsound).sentence(unsound);
    assertTrue(sentence.matches(".*26 V sends [0-9.]+ % of healthy systems .*supply [0-9.]+ V.*"), sentence);
  }

  @Test
  void checkOnTheCommonWireDeletedLeavesItsFaultMissed() {
    String check = "## C conductor open";
    String whole = LIBRARY.text().texts().get(PATH).text();
    assertTrue(whole.contains(check), whole);
    assertEquals(1, outcome(StarterProofs.of(BLANK)).found(), 1e-9);
    Library spoiled = with(StarterProofTest::withoutCommonWire);
    Proof proof = StarterProofs.prove(spoiled, BLANK);
    assertEquals(0, outcome(proof).found());
    assertFalse(codes(proof).filter(code -> code.startsWith("fault-")).toList().isEmpty());
  }

  /** The way on that leads to the finding goes where the other answers go. */
  private static String withoutCommonWire(String text) {
    return text.replace("(#c-conductor-open)", "(#thermostat-dead)").replace("[C conductor open]",
        "[Thermostat dead]");
  }

  private static Proof.Outcome outcome(Proof proof) {
    return proof.outcomes().stream().filter(outcome -> outcome.name().equals("C cable open")).findFirst().orElseThrow();
  }

  private static Library with(UnaryOperator<String> change) {
    String text = LIBRARY.text().texts().get(PATH).text();
    String changed = change.apply(text);
    assertFalse(changed.equals(text), "the change found nothing to change");
    LibraryText all = StarterLibrary.with(PATH, changed);
    List<CompiledTree> trees = LIBRARY.trees().stream()
        .map(tree -> tree.path().equals(PATH) ? LibraryCompiler.compile(BLANK, all.texts().get(PATH), LIBRARY) : tree)
        .toList();
    return LIBRARY.with(all, trees);
  }

  private static Stream<String> codes(Proof proof) {
    return proof.problems().stream().map(problem -> problem.code().name());
  }
}
