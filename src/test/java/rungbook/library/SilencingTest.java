package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.source.Problem;
import rungbook.source.ProblemList;

/** What {@code quiet:} lines set apart, and where they count. */
class SilencingTest {

  private static final String TREE = """
      ~~~~markdown
      ---
      title: Outdoor unit silent
      complaint: The outdoor unit does not start.
      FRONT---

      Press <i>gently</i>.

      ## Contactor

      ```check
      look: contactor pulled in
      STEP```

      Press <b>gently</b>.

      - yes: [Contactor works](#contactor-works)
      - no: [Coil open](#coil-open)

      ## Contactor works

      ```finding
      healthy: yes
      ```

      Press <u>gently</u>.

      ## Coil open

      ```finding
      fault: contactor coil open
      refer: a senior technician
      ```
      ~~~~
      """;

  private static Library library(String front, String step) {
    return Example.library(TREE.replace("FRONT", front).replace("STEP", step));
  }

  private static List<String> shown(Library library) {
    return words(library.found().shown().stream());
  }

  private static List<String> silenced(Library library) {
    return words(library.tree("example").orElseThrow().found().silenced().stream().map(one -> one.problem()));
  }

  private static List<String> words(Stream<Problem> problems) {
    return problems.map(one -> one.code() + " " + one.source().text(one.span())).toList();
  }

  @Test
  void aStepsLineCountsInItsStepAlone() {
    Library library = library("", "quiet: html-shown-as-text, because the label reads so\n");
    assertEquals(List.of("html-shown-as-text <b>"), silenced(library).stream().distinct().limit(1).toList());
    assertTrue(silenced(library).stream().allMatch(one -> one.contains("b>")), silenced(library).toString());
    assertTrue(shown(library).stream().allMatch(one -> one.contains("i>") || one.contains("u>")),
        shown(library).toString());
  }

  @Test
  void theFrontMattersLineCountsOutsideTheSteps() {
    Library library = library("quiet: html-shown-as-text, because the label reads so\n", "");
    assertTrue(silenced(library).stream().allMatch(one -> one.contains("i>")), silenced(library).toString());
    assertTrue(shown(library).stream().noneMatch(one -> one.contains("i>")), shown(library).toString());
    assertTrue(shown(library).stream().anyMatch(one -> one.contains("b>")), shown(library).toString());
  }

  @Test
  void theReasonIsKeptWithItsCommasAndColons() {
    Library library = library("",
        "quiet: \"html-shown-as-text, because the label: it reads so, and because it must\"\n");
    assertEquals(List.of("the label: it reads so, and because it must"),
        library.tree("example").orElseThrow().found().silenced().stream().map(one -> one.quiet().reason()).distinct()
            .toList());
  }

  @Test
  void oneLineSilencesSeveralCodesAndEachIsJudged() {
    Library library = library("", "quiet: check-settled, html-shown-as-text, because the label reads so\n");
    assertTrue(shown(library).contains("quiet-unused check-settled"), shown(library).toString());
    assertTrue(shown(library).stream().noneMatch(one -> one.contains("<b>")), shown(library).toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"quiet: html-shown-as-text", "quiet: html-shown-as-text, because",
      "quiet: html-shown-as-text, becauseofit"})
  void withoutAReasonNothingIsSilenced(String line) {
    Library library = library("", line + "\n");
    assertEquals(List.of(), silenced(library));
    assertTrue(shown(library).stream().anyMatch(one -> one.startsWith("quiet-without-reason")),
        shown(library).toString());
  }

  @Test
  void aProblemWithTheLinesThemselvesCannotBeSilenced() {
    Library library = library("", "quiet: check-settled, quiet-unused, because I say so\n");
    assertTrue(shown(library).containsAll(List.of("quiet-unused check-settled", "quiet-unused quiet-unused")),
        shown(library).toString());
  }

  @Test
  void anErrorIsNeverSilenced() {
    Library library = library("", "minuts: 3\nquiet: unknown-key, because it will be a key one day\n");
    assertTrue(shown(library).containsAll(List.of("unknown-key minuts", "quiet-error unknown-key")),
        shown(library).toString());
  }

  @Test
  void aSharedTextSilencesItsOwnProblems() {
    String caution = """
        `shared/cautions/hot-parts.md`

        ~~~~markdown
        ---
        title: Hot parts
        level: warning
        hazard: Hot parts burn skin.
        avoid: Wait until they are cool.
        QUIET---

        Wait <b>long</b>.
        ~~~~
        """;
    assertTrue(Example.problems(caution.replace("QUIET", "")).stream().anyMatch(SilencingTest::isHtml));
    assertEquals(List.of(),
        Example.problems(caution.replace("QUIET", "quiet: html-shown-as-text, because the label reads so\n")));
    assertEquals(List.of("quiet-unused check-settled"),
        words(Example.problems(caution.replace("QUIET", "quiet: check-settled, because it is\n")
            .replace("<b>long</b>", "long")).stream()));
  }

  private static boolean isHtml(Problem problem) {
    return problem.code().name().equals("html-shown-as-text");
  }

  private static final String FRAGMENT = """
      `shared/fragments/wait.md`

      ~~~~markdown
      ---
      title: Wait
      exits: waited
      ---

      ## Is it lit

      ```check
      look: status light
      QUIET```

      - yes: [Waited](#waited)
      - no: [Waited](#waited)

      ## Waited

      ```exit
      answer: waited
      ```
      ~~~~
      """;

  private static String taker(String name, String first) {
    return """
        `trees/NAME.md`

        ~~~~markdown
        ---
        title: NAME
        complaint: Nothing happens.
        ---

        FIRST## Wait

        ```take
        fragment: wait
        ```

        - waited: [End](#end)

        ## End

        ```finding
        refer: the office
        ```
        ~~~~
        """.replace("NAME", name).replace("FIRST", first);
  }

  private static final String ASKS_BEFORE = """
      ## Lit at all

      ```check
      look: status light
      ```

      - yes: [Wait](#wait)
      - no: [Wait](#wait)

      """;

  /** The first tree repeats the fragment's check, the second does not: one needs the line, and that is enough. */
  @Test
  void aFragmentsLineIsUsedWhenAnyTreeNeedsIt() {
    String quiet = FRAGMENT.replace("QUIET", "quiet: check-repeated, because the light may have gone out\n");
    String trees = taker("one", ASKS_BEFORE) + "\n" + taker("two", "");
    assertEquals(List.of("check-repeated"), codes(Example.problems(FRAGMENT.replace("QUIET", "") + "\n" + trees)));
    assertEquals(List.of(), codes(Example.problems(quiet + "\n" + trees)));
    assertEquals(List.of("quiet-unused"), codes(Example.problems(quiet + "\n" + taker("two", ""))));
    assertEquals(List.of(), codes(Example.problems(quiet)), "no tree takes it in, so nobody knows");
  }

  private static List<String> codes(List<Problem> problems) {
    return problems.stream().map(problem -> problem.code().name()).toList();
  }

  private static String tellsNothing(String heading) throws IOException {
    return Example.under(heading, Files.readString(Path.of("docs/rules/check-tells-nothing.md")))
        .replace("look: thermostat display on\n",
            "look: thermostat display on\nquiet: check-tells-nothing, because it shows who has left the panel open\n");
  }

  private static ProblemList proof(Library library) {
    CompiledTree tree = library.tree("example").orElseThrow();
    assertEquals(List.of(), tree.problems(), "a check does not judge the codes of a proof");
    return Silencing.ofProof(tree.tree(), Example.prove(tree.tree(), library));
  }

  @Test
  void aProofsProblemIsSilencedAtItsStep() throws IOException {
    ProblemList found = proof(Example.library(tellsNothing("Bad").replace(
        "cautions: live control voltage\n",
        "cautions: live control voltage\nquiet: check-tells-nothing, because it is\n")));
    assertTrue(found.silenced().stream().anyMatch(one -> one.problem().code().name().equals("check-tells-nothing")));
    assertTrue(found.shown().stream().noneMatch(one -> one.code().name().equals("check-tells-nothing")));
  }

  @Test
  void aLineThatSilencesNothingIsAProblemOnceTheTreeIsProved() throws IOException {
    Library library = Example.library(tellsNothing("Mended"));
    assertTrue(codes(proof(library).shown()).contains("quiet-unused"), codes(proof(library).shown()).toString());
    Library unproved = Example.library(tellsNothing("Mended")
        .replace("system: split-cooling-gas-furnace\n", "").replaceFirst("(?m)^not for: .*\n", ""));
    assertEquals(List.of("not-proved"), codes(proof(unproved).shown()));
  }

  @Test
  void aTreeMaySayWhyItIsNotProved() {
    Library library = Example.library(TREE.replaceAll("(?m)^Press.*\n", "")
        .replace("FRONT", "quiet: not-proved, because there is no circuit of it\n").replace("STEP", ""));
    ProblemList found = proof(library);
    assertEquals(List.of(), found.shown());
    assertEquals("there is no circuit of it", found.silenced().get(0).quiet().reason());
  }
}
