package rungbook.report.demand;

import java.util.List;
import rungbook.proof.demand.ReadingAnswer;
import rungbook.proof.demand.ReadingQuestion;
import rungbook.proof.demand.Shown;
import rungbook.report.Columns;
import rungbook.system.Fault;

/** A reading on demand as text for a terminal. */
public final class ReadingText {

  private static final String INDENT = "  ";

  private final ReadingAnswer answer;
  private final ReadingQuestion question;
  private final StringBuilder out = new StringBuilder();

  private ReadingText(ReadingAnswer answer) {
    this.answer = answer;
    this.question = answer.question();
  }

  public static String of(ReadingAnswer answer) {
    var text = new ReadingText(answer);
    text.head();
    text.shown();
    text.activity();
    return text.out.toString();
  }

  private void head() {
    String variant = question.variant().isEmpty() ? "" : ", variant " + question.variant();
    line(question.system().vocabulary().title() + variant);
    line(INDENT + "set: " + ReadingWords.settings(question));
    line(INDENT + "fault: " + question.fault().map(Fault::name).orElse("none"));
  }

  private void shown() {
    if (answer.shown() instanceof Shown.Amounts amounts) {
      line(INDENT + ReadingWords.leads(question) + ":");
      line(INDENT + INDENT + "low " + ReadingWords.amount(amounts.low(), question) + ", usual "
          + ReadingWords.amount(amounts.usual(), question) + ", highest "
          + ReadingWords.amount(amounts.high(), question));
      notes(amounts).forEach(note -> line(INDENT + INDENT + note));
    } else if (answer.shown() instanceof Shown.Nothing nothing) {
      line(INDENT + ReadingWords.leads(question) + ":");
      line(INDENT + INDENT + ReadingWords.nothing(nothing.why(), question));
    }
  }

  private List<String> notes(Shown.Amounts amounts) {
    return ReadingNotes.of(amounts, question);
  }

  private void activity() {
    list("on", ReadingWords.names(answer.activity().on(), key -> ReadingWords.part(key, question)));
    list("has voltage but is not on",
        ReadingWords.names(answer.activity().humming(), key -> ReadingWords.part(key, question)));
    list("seen", ReadingWords.names(answer.activity().seen(), key -> ReadingWords.sight(key, question)));
  }

  private void list(String label, List<String> names) {
    line(INDENT + label + ": " + (names.isEmpty() ? "nothing" : String.join(", ", names)));
  }

  private void line(String text) {
    out.append(Columns.printable(text)).append('\n');
  }
}
