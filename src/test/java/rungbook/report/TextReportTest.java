package rungbook.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.Witness;

class TextReportTest {

  private static String text(Problem... problems) {
    return TextReport.of(new Report(1, List.of(problems), List.of()), Style.PLAIN);
  }

  @Test
  void aProblemShowsPlaceSentenceLineAndHint() {
    assertEquals("""
        trees/no cooling.md:7:20: error unknown-step: no step is called `mesure-coil`
              7 | - under 5: [Coil](#mesure-coil)
                |                    ^^^^^^^^^^^
          hint: write `measure-coil`, or add the missing step

        1 file checked: 1 error
        """, text(Sample.unknownStep()));
  }

  @Test
  void aPathIsWrittenStepByStepWithItsAnswers() {
    assertTrue(text(Sample.gapShownBy(Sample.path())).contains("""
          shown by this path:
            1. Call (line 1): done
            2. Y at the board (line 5)
        """));
  }

  @Test
  void aReadingAndWordsAreShown() {
    assertTrue(text(Sample.gapShownBy(new Witness.Reading("5.0 V"))).contains("  shown by a reading: 5.0 V\n"));
    assertTrue(text(Sample.gapShownBy(new Witness.Answers(List.of("yes", "any"))))
        .contains("  shown by the answer: yes, any\n"));
  }

  @Test
  void colorOnlyRepeatsWhatTheWordsSay() {
    Report report = new Report(1, List.of(Sample.unknownStep(), Sample.gapShownBy(Sample.path())), List.of());
    String colored = TextReport.of(report, Style.COLOR);
    assertTrue(colored.contains("\u001B[1;31m"));
    assertEquals(TextReport.of(report, Style.PLAIN), colored.replaceAll("\u001B\\[[0-9;]*m", ""));
  }

  @Test
  void noLineIsWiderThanAHundredColumns() {
    Source source = new Source("t.md", "word ".repeat(200) + "\n" + "字".repeat(200));
    Problem sentence = Problem.at(Code.of("unknown-thing"), source, new Span(0, source.text().length()))
        .with("name", "a name ".repeat(40)).with("kind", "panel")
        .with("known", "one, ".repeat(90)).with("system", "s");
    text(sentence, Problem.at(Code.of("not-yaml"), source, Span.at(source.text().length())).with("why", "so "))
        .lines().forEach(line -> assertTrue(Columns.of(line) <= Wrap.WIDTH, line));
  }

  @Test
  void aNameInAFileCannotSteerTheTerminal() {
    assertFalse(text(Sample.unknownStep().with("near", "\u001B]0;owned\u0007")).contains("\u001B"));
  }

  @Test
  void aSpanOverSeveralLinesSaysHowFarItGoes() {
    Source source = new Source("t.md", "one\ntwo\nthree\n");
    assertTrue(text(Problem.at(Code.of("no-step"), source, new Span(0, 8))).contains("^^^ to line 2\n"));
  }

  @Test
  void theSummaryCountsWhatIsSilencedAndShowsNothingOfIt() {
    assertEquals("1 file checked: no problems, 1 silenced\n",
        TextReport.of(new Report(1, List.of(), List.of(Sample.silenced())), Style.PLAIN));
  }

  @Test
  void theSummaryCountsEachSeverity() {
    assertEquals("1,204 files checked: no problems", TextReport.summary(new Report(1204, List.of(), List.of())));
    assertEquals("2 files checked: 2 errors, 1 note", TextReport.summary(new Report(2,
        List.of(Sample.unknownStep(), Sample.unknownStep(), Sample.at("html-shown-as-text", Sample.TREE, "Call")),
        List.of())));
  }
}
