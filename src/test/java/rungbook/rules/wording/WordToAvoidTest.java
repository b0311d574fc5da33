package rungbook.rules.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.markdown.DocumentReader;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Source;

class WordToAvoidTest {

  private static final WordList LIST = list("""
      | wheel | blower wheel |
      | gas cock | gas shutoff |
      | won't go | won't run |
      | EPA man | certified technician |
      | rests | is off, stops |
      """);

  private static WordList list(String rows) {
    var source = new Source("words.md", "| avoid | use |\n|---|---|\n" + rows);
    return WordListReader.read(DocumentReader.read(source)).list();
  }

  private static List<Problem> problems(String text) {
    return problems(text, heading -> false);
  }

  private static List<Problem> problems(String text, WordToAvoid.Linked linked) {
    return WordToAvoid.inspect(DocumentReader.read(new Source("trees/a.md", text)), Optional.empty(), LIST, linked);
  }

  private static String fixed(String text) {
    return Fix.apply(text, problems(text).stream().flatMap(problem -> problem.fix().stream())
        .flatMap(fix -> fix.edits().stream()).toList());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
      "The wheel turns.|The blower wheel turns.",
      "Wheel|Blower wheel",
      "WHEEL|BLOWER WHEEL",
      "The Gas Cock|The Gas Shutoff",
      "The GAS COCK|The GAS SHUTOFF",
      "It won\u2019t go, no.|It won't run, no.",
      "the epa man|the certified technician",
      "EPA man|certified technician",
      "**wheel** [wheel](a.md)|**blower wheel** [blower wheel](a.md)",
      "> wheel|> blower wheel",
      "1. wheel|1. blower wheel",
      "![wheel](a.png)|![blower wheel](a.png)"})
  void aFixKeepsCapitalsAndMarkup(String text, String expected) {
    assertEquals(expected, fixed(text));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
      "The blower wheel turns.", "A freewheel, wheels, wheel-lock.", "`wheel`", "wheel.md and a_wheel",
      "https://example.org/wheel", "[x](wheel.md)", "<b wheel>", "gas, cock", "gas **cock**"})
  void namesAndOtherWordsAreLeftAlone(String text) {
    assertEquals(List.of(), problems(text));
  }

  @Test
  void codeAndNamesOfReferencesAreLeftAlone() {
    assertEquals(List.of(), problems("x\n\n    wheel\n\n```text\nwheel\n```\n\n[wheel]\n\n[wheel]: a.md\n"));
  }

  @Test
  void aPhraseGoesOverTheEndOfALine() {
    assertEquals("Close the gas shutoff.\n", fixed("Close the gas\ncock.\n"));
  }

  @Test
  void whereTheListOffersSeveralWordsTheAuthorChooses() {
    Problem problem = problems("It rests.").get(0);
    assertEquals(Optional.empty(), problem.fix());
    assertEquals("`is off` or `stops`", problem.facts().get("instead"));
  }

  @Test
  void aHeadingTakesItsLinksWithIt() {
    assertEquals("## The blower wheel\n\n- a: [x](#the-blower-wheel)\n\n[See](#the-blower-wheel), [b][r].\n\n"
        + "[r]: #the-blower-wheel\n",
        fixed("## The wheel\n\n- a: [x](#the-wheel)\n\n[See](#the-wheel), [b][r].\n\n[r]: #the-wheel\n"));
  }

  @Test
  void aHeadingThatAnotherFileLinksToHasNoFix() {
    String text = "## The wheel\n\nThe wheel.\n";
    List<Problem> problems = problems(text, "a.md#the-wheel"::equals);
    assertEquals(2, problems.size());
    assertTrue(problems.get(0).fix().isEmpty());
    assertTrue(problems.get(1).fix().isPresent());
  }

  @Test
  void aHeadingWouldNotTakeTheNameOfAnother() {
    assertTrue(problems("## The wheel\n\n## The blower wheel\n").get(0).fix().isEmpty());
    assertTrue(problems("## The *old* wheel\n").get(0).fix().isEmpty());
  }

  @Test
  void frontMatterInQuotesIsReportedAndNotChanged() {
    assertEquals("---\ntitle: \"Wheel\"\ncomplaint: Blower wheel noise\nsystem: wheel\n---\n",
        fixed("---\ntitle: \"Wheel\"\ncomplaint: Wheel noise\nsystem: wheel\n---\n"));
    assertEquals(2, problems("---\ntitle: \"Wheel\"\ncomplaint: Wheel noise\nsystem: wheel\n---\n").size());
  }

  /** Words that begin a phrase again and again, and headings full of words, with links to each. */
  @Test
  void manyWordsTakeTimeInProportion() {
    String text = ("gas gas gas wheel ".repeat(400) + "\n\n").repeat(500) + "## " + "wheel ".repeat(3000) + "\n\n"
        + ("## wheel wheel\n\n" + "[a](#wheel-wheel)\n\n".repeat(5)).repeat(1_900);
    assertTimeoutPreemptively(Duration.ofSeconds(10), () -> assertTrue(problems(text).size() > 200_000));
  }
}
