package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.circuit.network.Samples;
import rungbook.proof.report.Proof;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Wording;

/** The starter trees find what they claim, and the proof notices when one is spoiled. */
class StarterProofTest {

  private static final Library LIBRARY = library();
  private static final Prover PROVER = new Prover(Samples.USUAL);
  private static final Map<String, Proof> PROVED = new HashMap<>();

  private static Library library() {
    try {
      return LibraryCompiler.compile(Folder.read(Path.of(".")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Stream<String> trees() {
    return LIBRARY.trees().stream().map(tree -> tree.tree().id());
  }

  @ParameterizedTest
  @MethodSource("trees")
  void treeFindsWhatItClaims(String id) {
    Proof proof = prove(LIBRARY, id);
    assertTrue(proof.claimed().detected() >= 0.95, () -> id + " detects " + proof.claimed().detected());
    assertTrue(proof.claimed().isolatedTo(2) >= 0.9, () -> id + " isolates " + proof.claimed().isolatedTo(2));
    assertEquals(0, proof.falseAlarmShare());
    assertEquals(List.of(), codes(proof).filter(code -> code.equals("healthy-condemned")).toList());
  }

  @ParameterizedTest
  @MethodSource("trees")
  void everyCaseEndsSomewhere(String id) {
    for (Proof.Outcome outcome : prove(LIBRARY, id).outcomes()) {
      double sum = outcome.found() + outcome.mistaken() + outcome.healthy() + outcome.referred() + outcome.handedOn()
          + outcome.nothing();
      assertEquals(1, sum, 1e-9, outcome.name());
    }
  }

  @Test
  void secondProofSaysTheSame() {
    assertEquals(prove(LIBRARY, "nothing-runs-thermostat-blank").endings(), new Prover(Samples.USUAL)
        .prove(LIBRARY.tree("nothing-runs-thermostat-blank").orElseThrow().tree(), LIBRARY.text(),
            id -> LIBRARY.tree(id).map(CompiledTree::tree))
        .proved().orElseThrow().endings());
  }

  @Test
  void limitMovedFrom20To26VoltsCondemnsHealthySystemsAndSaysAtWhichSupply() {
    Library spoiled = with("nothing-runs-thermostat-blank",
        text -> text.replace("- 20 or more", "- 26 or more").replace("- under 20", "- under 26"));
    List<Problem> problems = prove(spoiled, "nothing-runs-thermostat-blank").problems();
    Problem unsound = problems.stream()
        .filter(problem -> problem.facts().getOrDefault("fault", "").equals("healthy systems")).findFirst()
        .orElseThrow(() -> new AssertionError(problems.stream().map(problem -> problem.code().name()).toList()));
    String sentence = Wording.of(unsound).sentence(unsound);
    assertTrue(sentence.matches(".*26 V sends [0-9.]+ % of healthy systems .*supply [0-9.]+ V.*"), sentence);
  }

  @Test
  void checkOnTheCommonWireDeletedLeavesItsFaultMissed() {
    String check = "## C conductor broken";
    String whole = LIBRARY.text().texts().get("trees/nothing-runs-thermostat-blank.md").text();
    assertTrue(whole.contains(check), whole);
    assertEquals(1, outcome(LIBRARY, "C cable open").found(), 1e-9);
    Library spoiled = with("nothing-runs-thermostat-blank", StarterProofTest::withoutCommonWire);
    assertEquals(0, outcome(spoiled, "C cable open").found());
    assertFalse(
        codes(prove(spoiled, "nothing-runs-thermostat-blank")).filter(code -> code.startsWith("fault-")).toList()
            .isEmpty());
  }

  /** The way on that leads to the finding goes where the other answers go. */
  private static String withoutCommonWire(String text) {
    return text.replace("(#c-conductor-broken)", "(#thermostat-dead)").replace("[C conductor broken]",
        "[Thermostat dead]");
  }

  private static Proof.Outcome outcome(Library library, String fault) {
    return prove(library, "nothing-runs-thermostat-blank").outcomes().stream()
        .filter(outcome -> outcome.name().equals(fault)).findFirst().orElseThrow();
  }

  private static Library with(String id, java.util.function.UnaryOperator<String> change) {
    var texts = new TreeMap<>(LIBRARY.text().texts());
    String path = "trees/" + id + ".md";
    String changed = change.apply(texts.get(path).text());
    assertFalse(changed.equals(texts.get(path).text()), "the change found nothing to change");
    texts.put(path, new Source(path, changed));
    return LibraryCompiler.compile(new LibraryText(texts, LIBRARY.text().pictures(), List.of()));
  }

  private static Stream<String> codes(Proof proof) {
    return proof.problems().stream().map(problem -> problem.code().name());
  }

  /** The starter library's own proofs are made once for all tests. */
  private static Proof prove(Library library, String id) {
    return library == LIBRARY ? PROVED.computeIfAbsent(id, any -> proveAnew(library, id)) : proveAnew(library, id);
  }

  private static Proof proveAnew(Library library, String id) {
    return PROVER
        .prove(library.tree(id).orElseThrow().tree(), library.text(),
            other -> library.tree(other).map(CompiledTree::tree))
        .proved().orElseThrow();
  }
}
