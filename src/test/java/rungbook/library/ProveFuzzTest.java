package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungbook.proof.Proving;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Wording;
import rungbook.tree.Tree;

/**
 * A proof says what it shows or why it shows nothing, whatever the text: starter trees and systems with slips of the
 * pen. {@code -Drungbook.fuzz=20000} tries so many; {@code -Drungbook.fuzz.seed=7} begins elsewhere.
 */
class ProveFuzzTest {

  private static final int MUTANTS = Integer.getInteger("rungbook.fuzz", 30);
  private static final long SEED = Long.getLong("rungbook.fuzz.seed", 1);
  private static final String TREE = "trees/no-cooling-blower-runs.md";

  private final Prover prover = new Prover(4);
  private final Map<String, Tree> starter = new HashMap<>();

  @Test
  void noMutantMakesAProofThrow() throws IOException {
    LibraryText library = Folder.read(Path.of("."));
    LibraryCompiler.trees(library, LibraryCompiler.sharedAsNeeded(library), id -> true)
        .forEach(tree -> starter.put(tree.tree().id(), tree.tree()));
    List<String> trees = library.texts().keySet().stream().filter(path -> path.matches("trees/[^/]+\\.md")).toList();
    List<
        String> systems = library.texts().keySet().stream().filter(path -> path.startsWith("shared/systems/")).toList();
    int proved = 0;
    for (int i = 0; i < MUTANTS; i++) {
      String tree = trees.get(i % trees.size());
      LibraryText text = new Mutant(library, i % 3 == 2 ? systems.get(i % systems.size()) : tree, SEED * 1_000_003 + i)
          .text();
      proved += prove(text, i % 3 == 2 ? TREE : tree, "seed " + SEED + ", mutant " + i) ? 1 : 0;
    }
    assertTrue(proved * 3 > MUTANTS, proved + " of " + MUTANTS + " were proved");
  }

  private boolean prove(LibraryText text, String path, String name) {
    String id = path.substring("trees/".length(), path.length() - ".md".length());
    CompiledTree tree = LibraryCompiler.trees(text, LibraryCompiler.sharedAsNeeded(text), id::equals).findFirst()
        .orElseThrow();
    Proving.Result result = prover.prove(tree.tree(), text, other -> Optional.ofNullable(starter.get(other)));
    for (Problem problem : result.problems()) {
      String words = Wording.of(problem).sentence(problem) + Wording.of(problem).hint(problem);
      assertFalse(problem.code().name().equals("proof-failed"), () -> name + ": " + words);
      assertFalse(words.contains("NaN") || words.contains("Infinity"), () -> name + ": " + words);
    }
    return result.proved().isPresent();
  }

  /** Leads that float show nothing, and nobody belongs above: any place above nothing would do. */
  @Test
  void leadsThatFloatLeaveALimitItsPlace() throws IOException {
    LibraryText library = Folder.read(Path.of("."));
    String text = library.texts().get(TREE).text();
    for (String leads : List.of("Y, T1", "T1, C", "compressor S, C")) {
      String slip = text.replaceFirst("(## Y to C at the outdoor unit\\n(?s:.*?)leads: )Y, C\\n", "$1" + leads + "\n");
      assertFalse(slip.equals(text));
      var texts = new java.util.TreeMap<>(library.texts());
      texts.put(TREE, new Source(TREE, slip));
      assertTrue(prove(new LibraryText(texts, library.pictures(), List.of()), TREE, leads));
    }
  }

  /** One tree's failure is its own problem. */
  @Test
  void whatBreaksInATreeIsThatTreesProblem() throws IOException {
    LibraryText library = Folder.read(Path.of("."));
    Tree tree = LibraryCompiler
        .trees(library, LibraryCompiler.sharedAsNeeded(library), id -> id.equals("no-cooling-blower-runs"))
        .findFirst().orElseThrow().tree();
    Proving.Result result = prover.prove(tree, library, id -> {
      throw new IllegalStateException("broken");
    });
    assertEquals(List.of("proof-failed"), result.problems().stream().map(problem -> problem.code().name()).toList());
    assertTrue(result.problems().get(0).facts().get("why").startsWith("IllegalStateException"),
        result.problems().toString());
  }
}
