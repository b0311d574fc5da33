package rungbook.system.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.system.variant.VariantDocument;
import rungbook.system.variant.VariantText;
import rungbook.system.variant.VariantTexts;

/** A variant that takes over lines of its base is the same as one of which every line is read. */
class VariantLinesTest {

  /** Its variants change what conditions, terminals and faults of lines mean that they do not write themselves. */
  private static final String BENCH = """
      ---
      title: Bench
      ---

      ```locations
      bench: start
      ```

      ```points
      L1: at bench, 120 V
      N: at bench
      A: at bench
      B: at bench
      ```

      ```controls
      lever: off, on, at bench
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, L1 to N
      fuse: fuse, 5 A, L1 to A
      lever: contact, A to B, closed when lever on
      lamp: load, 120 V, 60 W, B to N
      glow: state, when lamp on
      relay: contact, A to B, closed when glow and variant small
      ```

      ```assemblies
      box: fuse, lever
      ```

      ```sights
      light: at bench, when lamp on
      dark: at bench, when not variant small
      ```

      ```faults
      fuse open: open fuse
      relay open: open relay
      lamp shorted: short B to N
      ```

      ```variants
      small: share 5 %
      no lamp: share 5 %
      other lamp: share 5 %
      moved: share 5 %
      no relay: share 5 %
      ```

      ```variant no lamp
      without: lamp
      glow: state, when lever on
      ```

      ```variant other lamp
      lamp: state, when lever on
      ```

      ```variant moved, points
      B: at bench, 24 V
      C: at bench
      ```

      ```variant no relay
      without: relay
      ```
      """;

  private static Document starter(String system) throws IOException {
    Path file = Path.of("shared/systems", system + ".md");
    return DocumentReader.read(new Source(file.toString(), Files.readString(file)));
  }

  private static List<String> words(SystemProblems problems) {
    return problems.all().stream().map(Problem::toString).toList();
  }

  private static void assertAlike(Document document) {
    BaseLines base = SystemReader.lines("s", document).lines();
    for (VariantText variant : VariantTexts.read(document, new Problems())) {
      BaseLines nothing = BaseLines.none(base.system().vocabulary(), base.names());
      SystemReader.Lines whole = SystemReader.lines(document, variant, nothing);
      SystemReader.Lines quick = SystemReader.lines(document, variant, base);
      assertEquals(whole.system(), quick.system(), variant.name());
      assertEquals(words(whole.problems()), words(quick.problems()), variant.name());
      if (whole.system().faults().size() == document.entries("faults").count()) {
        assertEquals(VocabularyReader.read("s", VariantDocument.of(document, variant)), quick.system().vocabulary());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"split-cooling-gas-furnace", "heat-pump", "fan-coil-electric-heat"})
  void theSystemsOfTheStarterLibraryAreReadAlike(String system) throws IOException {
    assertAlike(starter(system));
  }

  @Test
  void aLineIsReadAnewWhereANameInItMeansSomethingElse() {
    assertAlike(DocumentReader.read(new Source("shared/systems/bench.md", BENCH)));
  }

  @Test
  void aLineOfWhichNothingChangedIsTheSame() {
    Document document = DocumentReader.read(new Source("bench.md", BENCH));
    SystemReader.Lines base = SystemReader.lines("bench", document);
    VariantTexts.read(document, new Problems()).stream().filter(variant -> !variant.changes("points"))
        .forEach(variant -> assertSame(base.system().part("fuse").orElseThrow(),
            SystemReader.lines(document, variant, base.lines()).system().part("fuse").orElseThrow(), variant.name()));
  }
}
