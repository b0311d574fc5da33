package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.source.Problem;
import rungbook.source.Wording;

/** Every code has a page, every page a code, and what the pages show is true. */
class RulePagesTest {

  private static final Path PAGES = Path.of("docs/rules");
  private static final Path SOURCES = Path.of("src/main/java/rungbook");
  private static final Pattern CODE = Pattern.compile("\"([a-z0-9]+(?:-[a-z0-9]+)+)\"");
  private static final Pattern BLANK = Pattern.compile("\\{[a-z-]+}");

  /** No text can show a file that the computer refuses to hand out. */
  private static final Set<String> WITHOUT_EXAMPLE = Set.of("file-unreadable");

  static Stream<String> pages() throws IOException {
    try (Stream<Path> files = Files.list(PAGES)) {
      return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".md")).map(name -> name.substring(0, name.length() - 3))
          .sorted().toList().stream();
    }
  }

  static Stream<String> pagesWithExample() throws IOException {
    Set<String> proofs = codesIn(SOURCES.resolve("proof")); // ProofPagesTest proves their examples
    return pages().filter(code -> !WITHOUT_EXAMPLE.contains(code) && !proofs.contains(code));
  }

  @Test
  void everyCodeHasAPageAndEveryPageACode() throws IOException {
    assertEquals(new TreeSet<>(codesIn(SOURCES)), pages().collect(Collectors.toCollection(TreeSet::new)));
  }

  @ParameterizedTest
  @MethodSource("pagesWithExample")
  void badExampleShowsTheProblemAndNoOther(String code) throws IOException {
    List<Problem> problems = Example.problemsUnder("Bad", page(code));
    assertEquals(Set.of(code), problems.stream().map(Problem::code).collect(Collectors.toSet()), () -> printed(problems));
    problems.forEach(RulePagesTest::assertEveryBlankIsFilled);
  }

  @ParameterizedTest
  @MethodSource("pagesWithExample")
  void mendedExampleHasNoProblem(String code) throws IOException {
    List<Problem> problems = Example.problemsUnder("Mended", page(code));
    assertEquals(List.of(), problems, () -> printed(problems));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void sentenceAndHintKeepTheHouseStyle(String code) {
    Wording wording = Wording.of(code);
    for (String line : Stream.concat(Stream.of(wording.says(), wording.hint()), wording.near().stream()).toList()) {
      assertFalse(line.endsWith("."), line);
      assertTrue(line.length() > 10 && !line.contains("please") && !line.contains("!") || line.contains("!["), line);
      assertEquals(0, line.chars().filter(c -> c == '`').count() % 2, line);
    }
    assertTrue(wording.page().startsWith("# "), code);
  }

  private static void assertEveryBlankIsFilled(Problem problem) {
    Wording wording = Wording.of(problem);
    assertFalse(BLANK.matcher(wording.sentence(problem)).find(), wording.sentence(problem));
    assertFalse(BLANK.matcher(wording.hint(problem)).find(), wording.hint(problem));
    Problem far = new Problem(problem.code(), problem.source(), problem.span(), without("near", problem), problem.witness());
    assertFalse(BLANK.matcher(wording.hint(far)).find(), wording.hint(far));
    assertTrue(wording.near().isEmpty() || problem.facts().containsKey("near"), "the bad example of " + problem.code() + " has a near name");
  }

  private static java.util.Map<String, String> without(String name, Problem problem) {
    var facts = new java.util.HashMap<>(problem.facts());
    facts.remove(name);
    return facts;
  }

  /** In files that make problems, a word with hyphens in quotes is a code. */
  static Set<String> codesIn(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".java")).map(RulePagesTest::read).filter(text -> text.contains("Problem"))
          .filter(text -> !text.contains("package rungbook.web") && !text.contains("package rungbook.cli"))
          .flatMap(text -> CODE.matcher(text).results().map((MatchResult match) -> match.group(1))).collect(Collectors.toSet());
    }
  }

  private static String page(String code) throws IOException {
    return read(PAGES.resolve(code + ".md"));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String printed(List<Problem> problems) {
    return problems.stream().map(p -> p.source().name() + ":" + p.place() + " " + p.code() + " " + p.facts()).collect(Collectors.joining("\n"));
  }
}
