package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.proof.Proving;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Wording;
import rungbook.tree.Tree;

/**
 * What the pages of the proof's rules show is true: the bad example shows the problem, the mended one needs no mending.
 */
@Tag("slow")
class ProofPagesTest {

  static Stream<String> codes() {
    return DeclaredCodes.in("rungbook.proof").stream();
  }

  @ParameterizedTest
  @MethodSource("codes")
  void badExampleShowsTheProblem(String code) throws IOException {
    List<Problem> problems = problems("Bad", code).stream().filter(problem -> problem.code().name().equals(code))
        .toList();
    assertFalse(problems.isEmpty(), code);
    for (Problem problem : problems) {
      String words = Wording.of(problem).sentence(problem) + Wording.of(problem).hint(problem);
      assertFalse(words.contains("{"), words);
      assertFalse(words.contains("NaN") || words.contains("Infinity"), words);
    }
  }

  @ParameterizedTest
  @MethodSource("codes")
  void mendedExampleNeedsNoMending(String code) throws IOException {
    List<Problem> problems = problems("Mended", code);
    assertTrue(problems.stream().noneMatch(problem -> problem.code().name().equals(code)), code);
    assertEquals(List.of(), problems.stream().filter(problem -> Wording.of(problem).severity() != Severity.NOTE)
        .map(problem -> problem.code() + " " + problem.place() + " " + problem.facts()).toList());
  }

  /** With {@code -Drungbook.short=true} every sixth page. */
  static Stream<String> spoiled() throws IOException {
    return ShortRun.oneIn(6, RulePagesTest.pagesWithExample().toList());
  }

  /** Whatever is wrong with a tree, a proof says so or goes on; it never breaks. */
  @ParameterizedTest
  @MethodSource("spoiled")
  void everySpoiledTreeIsProvedOrSaysWhyNot(String code) throws IOException {
    String page = Files.readString(Path.of("docs/rules", code + ".md"));
    if (page.contains("\n## Bad\n") && !page.contains("… ")) {
      Library library = Example.library(Example.under("Bad", page));
      for (CompiledTree tree : library.trees()) {
        Proving.Result result = Example.prove(tree.tree(), library);
        assertFalse(result.toString().contains("NaN"), code);
      }
    }
  }

  private static List<Problem> problems(String heading, String code) throws IOException {
    Library library = Example.library(Example.under(heading, Files.readString(Path.of("docs/rules", code + ".md"))));
    List<Problem> compiled = library.tree("example").orElseThrow().problems();
    assertEquals(List.of(), compiled, () -> code + " has problems that need no proof");
    Tree tree = library.tree("example").orElseThrow().tree();
    return Stream.concat(
        Example.prove(tree, library).problems().stream(), Example.systemProblems(tree, library).stream()).toList();
  }
}
