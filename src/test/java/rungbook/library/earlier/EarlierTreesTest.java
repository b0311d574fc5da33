package rungbook.library.earlier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.library.Example;
import rungbook.library.Library;
import rungbook.library.LibraryText;
import rungbook.library.solving.Prover;
import rungbook.proof.comparison.Against;
import rungbook.proof.comparison.ComparisonWords;
import rungbook.proof.comparison.ProofComparison;
import rungbook.proof.report.Proof;

/** A lamp behind a fuse, worked out by hand: one check tells the fuse from the lamp. */
class EarlierTreesTest {

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
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, L1 to N
      fuse: fuse, 5 A, L1 to A
      lamp: load, 120 V, 60 W, A to N
      ```

      ```faults
      fuse open: open fuse
      lamp open: open lamp
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
      ---

      ## Read A

      ```check
      measure: AC volts
      leads: A, N
      at: bench
      expect: 110 to 130 V
      ```

      - under 60: [Fuse](#fuse)
      - 60 or more: [Lamp](#lamp)

      ## Fuse

      ```finding
      fault: fuse open
      ```

      ## Lamp

      ```finding
      fault: lamp open
      ```
      ~~~~
      """;
  private static final Library NOW = Example.library(SYSTEM + TREE);
  private static final Prover PROVER = new Prover(8);
  private static final Proof PROOF = PROVER.prove(NOW.tree("dark").orElseThrow().tree(), NOW.text(),
      id -> Optional.empty()).proved().orElseThrow();

  private static String text() {
    return NOW.tree("dark").orElseThrow().tree().source().text();
  }

  private static ProofComparison against(String earlier) {
    Against against = EarlierTrees.of(NOW.text(), "trees/dark.md", earlier).compare(PROOF, "revision 1", PROVER);
    assertEquals("revision 1", against.name());
    return against.found().orElseThrow();
  }

  private static List<String> words(ProofComparison comparison) {
    return comparison.changes().stream().map(ComparisonWords::of).toList();
  }

  /** The earlier text had the two ways the wrong way round; healthy systems read 120 V, as with the lamp open. */
  @Test
  void whatEndsElsewhereIsToldWithBothPlaces() {
    ProofComparison found = against(text().replace("under 60: [Fuse](#fuse)", "under 60: [Lamp](#lamp)")
        .replace("more: [Lamp](#lamp)", "more: [Fuse](#fuse)"));
    assertEquals(List.of("healthy systems: ended at Fuse, now at Lamp", "fuse open: ended at Lamp, now at Fuse",
        "lamp open: ended at Fuse, now at Lamp"), words(found));
    assertEquals(0, found.worse(), "it was wrong before");
    assertEquals(List.of("detected: 0 % before, now 100 %"), ComparisonWords.figures(found));
  }

  @Test
  void whatIsNowMistakenIsWorse() {
    Library wrong = Example.library(SYSTEM + TREE.replace("under 60: [Fuse](#fuse)", "under 60: [Lamp](#lamp)")
        .replace("more: [Lamp](#lamp)", "more: [Fuse](#fuse)"));
    Proof now = PROVER.prove(wrong.tree("dark").orElseThrow().tree(), wrong.text(), id -> Optional.empty()).proved()
        .orElseThrow();
    ProofComparison found = EarlierTrees.of(NOW.text()).compare(now, "old", PROVER).found().orElseThrow();
    assertEquals(2, found.worse());
    assertTrue(found.changes().get(0).isWorse() && !found.changes().get(2).isWorse(), "the worse ones are first");
  }

  /** A new heading, other prose and another limit in the same range change nothing. */
  @ParameterizedTest
  @CsvSource({"## Fuse|## The fuse is open#fuse", "Dark|Dark lamp", "60|50"})
  void whatKeepsItsMeaningIsTheSame(String change) {
    String[] both = change.split("\\|");
    String earlier = both[1].contains("#fuse")
        ? text().replace("## Fuse", "## The fuse is open").replace("#fuse", "#the-fuse-is-open")
        : text().replace(both[0], both[1]);
    ProofComparison found = against(earlier);
    assertEquals(List.of(), words(found));
    assertEquals("every fault ends where it did", ComparisonWords.summary(found));
  }

  @Test
  void whatCannotBeProvedIsNotCompared() {
    Against against = EarlierTrees.of(NOW.text(), "trees/dark.md", text().replace("system: lamp", "system: none"))
        .compare(PROOF, "revision 1", PROVER);
    assertEquals(Optional.empty(), against.found());
    assertTrue(against.why().contains("there is no system `none`"), against.why());
  }

  @Test
  void aCopyMayNotHaveTheTree() {
    var texts = new TreeMap<>(NOW.text().texts());
    texts.remove("trees/dark.md");
    Against against = EarlierTrees.of(new LibraryText(texts, NOW.text().pictures(), List.of()))
        .compare(PROOF, "old", PROVER);
    assertEquals("it has no `dark.md`", against.why());
  }
}
