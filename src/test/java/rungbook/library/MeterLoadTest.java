package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rungbook.report.ProofJson;
import rungbook.report.Report;
import rungbook.source.Source;
import rungbook.tree.Tree;

/** The load that a meter's text states is in the circuit when a tree is proved with it. */
class MeterLoadTest {

  private static final String METER = "shared/meters/field-meter.md";

  @Test
  void anotherLoadIsAnotherProof() throws IOException {
    String usual = proof("10 Mohm, ", "10 Mohm, ");
    assertEquals(usual, proof("1 % + 3 digits, 10 Mohm", "1 % + 3 digits, 10000 kohm"));
    assertNotEquals(usual, proof("1 % + 3 digits, 10 Mohm", "1 % + 3 digits, 20 kohm"));
  }

  @Test
  void withoutALoadTheUsualOneIsTaken() throws IOException {
    assertEquals(proof("10 Mohm, ", "10 Mohm, "), proof("1 % + 3 digits, 10 Mohm", "1 % + 3 digits"));
  }

  private String proof(String stated, String instead) throws IOException {
    LibraryText library = Folder.read(Path.of("."));
    var texts = new TreeMap<>(library.texts());
    texts.put(METER, new Source(METER, texts.get(METER).text().replace(stated, instead)));
    var text = new LibraryText(texts, library.pictures(), List.of());
    Tree tree = LibraryCompiler.trees(text, LibraryCompiler.sharedAsNeeded(text), "no-cooling-blower-runs"::equals)
        .findFirst()
        .orElseThrow().tree();
    var result = WholeWay.PROVER.prove(tree, text, id -> Optional.empty());
    return ProofJson.of(List.of(new ProofJson.Of("tree", result.proved().orElseThrow())),
        new Report(1, List.of(), List.of()));
  }
}
