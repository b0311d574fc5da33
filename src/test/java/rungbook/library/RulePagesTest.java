package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.rules.Registry;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Wording;

/** Every code has a page, every page a code, and what the pages show is true. */
@Tag("slow")
class RulePagesTest {

  private static final Path PAGES = Path.of("docs/rules");
  private static final Pattern BLANK = Pattern.compile("\\{[a-z-]+}");

  private static final Set<String> RULES = Registry.RULES.stream()
      .map(rule -> rule.getClass().getSimpleName()).collect(Collectors.toSet());

  /**
   * No text can show an unreadable file, a changed database or a note of others alone; none is known that breaks a
   * proof or a check.
   */
  private static final Set<String> WITHOUT_EXAMPLE = Set.of("file-unreadable", "changed-outside", "proof-failed",
      "text-too-costly", "more-problems");

  static Stream<String> pages() throws IOException {
    try (Stream<Path> files = Files.list(PAGES)) {
      return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".md"))
          .map(name -> name.substring(0, name.length() - 3))
          .sorted().toList().stream();
    }
  }

  static Stream<String> pagesWithExample() throws IOException {
    Set<String> proofs = DeclaredCodes.in("rungbook.proof"); // ProofPagesTest proves their examples
    return pages().filter(code -> !WITHOUT_EXAMPLE.contains(code) && !proofs.contains(code));
  }

  @Test
  void everyCodeHasAPageAndEveryPageACode() throws IOException {
    List<String> declared = DeclaredCodes.all().stream().map(one -> one.code().name()).sorted().toList();
    assertEquals(pages().toList(), declared, "each declared once");
  }

  @Test
  void everyConstantIsCalledByItsCode() {
    DeclaredCodes.all().forEach(
        one -> assertEquals(one.code().name(), one.constant().toLowerCase(Locale.ROOT).replace('_', '-'), one.type()));
  }

  /** A class with one code bears its name; one with several is a family of which the first that applies is reported. */
  @Test
  void everyRuleWithOneCodeIsCalledByIt() {
    Map<String, List<String>> byRule = DeclaredCodes.all().stream().filter(one -> RULES.contains(one.type()))
        .collect(Collectors.groupingBy(DeclaredCodes.Declared::type,
            Collectors.mapping(one -> one.code().name(), Collectors.toList())));
    byRule.forEach(
        (rule, codes) -> assertTrue(codes.size() > 1 || codes.get(0).equals(hyphened(rule)), rule + " " + codes));
    assertEquals(RULES, byRule.keySet(), "every rule declares a code of its own");
  }

  @ParameterizedTest
  @MethodSource("pagesWithExample")
  void everyRuleReportsNoCodeButItsOwn(String code) throws IOException {
    for (CompiledTree tree : Example.library(Example.under("Bad", page(code))).trees()) {
      RuleContext subject = RuleContext.of(tree.tree());
      for (Rule rule : Registry.RULES) {
        Problems found = new Problems();
        rule.inspect(subject, found);
        found.all()
            .forEach(problem -> assertTrue(rule.codes().contains(problem.code()), rule + " reports " + problem.code()));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("pagesWithExample")
  void badExampleShowsTheProblemAndNoOther(String code) throws IOException {
    List<Problem> problems = Example.problemsUnder("Bad", page(code));
    assertEquals(Set.of(Code.of(code)), problems.stream().map(Problem::code).collect(Collectors.toSet()),
        () -> printed(problems));
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
    Wording wording = Wording.of(Code.of(code));
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
    Problem far = new Problem(problem.code(), problem.source(), problem.span(), without("near", problem),
        problem.witness(), problem.fix());
    assertFalse(BLANK.matcher(wording.hint(far)).find(), wording.hint(far));
    assertTrue(wording.near().isEmpty() || problem.facts().containsKey("near"),
        "the bad example of " + problem.code() + " has a near name");
  }

  private static java.util.Map<String, String> without(String name, Problem problem) {
    var facts = new java.util.HashMap<>(problem.facts());
    facts.remove(name);
    return facts;
  }

  private static String hyphened(String camelCase) {
    return camelCase.replaceAll("(?<=.)(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
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
    return problems.stream().map(p -> p.source().name() + ":" + p.place() + " " + p.code() + " " + p.facts())
        .collect(Collectors.joining("\n"));
  }
}
