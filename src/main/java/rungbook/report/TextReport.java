package rungbook.report;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.source.Place;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.source.Wording;
import rungbook.text.English;

/** Problems as text: place, sentence, source line, hint, and witness. */
public final class TextReport {

  private static final String INDENT = "  ";
  private static final int GUTTER = 7;

  private final Style style;
  private final StringBuilder out = new StringBuilder();

  private TextReport(Style style) {
    this.style = style;
  }

  /** The report, ending with its summary line. */
  public static String of(Report report, Style style) {
    TextReport text = new TextReport(style);
    report.problems().forEach(text::write);
    text.out.append(summary(report)).append('\n');
    return text.out.toString();
  }

  /** {@code 8 files checked: 2 errors, 1 warning, 3 silenced}. */
  static String summary(Report report) {
    String counts = Stream.of(Severity.values()).filter(severity -> report.count(severity) > 0)
        .map(severity -> counted(report.count(severity), severity.word())).collect(Collectors.joining(", "));
    String silenced = report.silenced().isEmpty() ? "" : ", " + Digits.grouped(report.silenced().size()) + " silenced";
    return counted(report.files(), "file") + " checked: " + (counts.isEmpty() ? "no problems" : counts) + silenced;
  }

  private static String counted(long number, String word) {
    return English.counted(Digits.grouped(number), word);
  }

  private void write(Problem problem) {
    Wording wording = Wording.of(problem);
    writeHead(problem, wording);
    if (!problem.source().text().isEmpty()) {
      writeLine(problem.source(), problem.span(), wording.severity());
    }
    writeAside("hint: ", wording.hint(problem));
    problem.witness().ifPresent(this::writeWitness);
    out.append('\n');
  }

  private void writeHead(Problem problem, Wording wording) {
    String place = Columns.printable(problem.source().name() + ":" + problem.place()) + ": ";
    String severity = wording.severity().word();
    String label = severity + " " + problem.code() + ": ";
    int used = Columns.of(place) + label.length();
    out.append(style.strong(place)).append(style.severity(wording.severity(), severity))
        .append(label.substring(severity.length()))
        .append(Wrap.text(Columns.printable(wording.sentence(problem)), used, INDENT.length())).append('\n');
  }

  private void writeLine(Source source, Span span, Severity severity) {
    int last = source.placeAt(Math.max(span.start(), span.end() - 1)).line();
    String further = last > source.placeAt(span.start()).line() ? " to line " + last : "";
    MarkedLine line = MarkedLine.of(source, span, Wrap.WIDTH - GUTTER - 3 - further.length());
    String rail = style.faint(" |") + " ";
    String marks = line.marks().stripLeading();
    out.append(style.faint(Digits.right(line.number(), GUTTER))).append(rail).append(line.text()).append('\n');
    out.append(" ".repeat(GUTTER)).append(rail).append(" ".repeat(line.marks().length() - marks.length()))
        .append(style.severity(severity, marks)).append(further).append('\n');
  }

  private void writeAside(String label, String text) {
    out.append(INDENT).append(style.strong(label))
        .append(Wrap.text(Columns.printable(text), INDENT.length() + label.length(), INDENT.length() + label.length()))
        .append('\n');
  }

  private void writeWitness(Witness witness) {
    if (witness instanceof Witness.Reading reading) {
      writeAside("shown by a reading: ", reading.shown());
    } else if (witness instanceof Witness.Answers answers) {
      writeAside("shown by the answer: ", String.join(", ", answers.words()));
    } else if (witness instanceof Witness.Path path) {
      writePath(path);
    }
  }

  private static String inVariant(Witness.Path path) {
    return path.variant().isEmpty() ? "" : ", in the variant " + Columns.printable(path.variant());
  }

  private void writePath(Witness.Path path) {
    out.append(INDENT).append(style.strong("shown by this path" + inVariant(path) + ":")).append('\n');
    int number = 1;
    for (Witness.Stop stop : path.stops()) {
      Place place = stop.source().placeAt(stop.span().start());
      String answer = stop.answer().isEmpty() ? "" : ": " + stop.answer();
      String label = Digits.right(number++, 5) + ". ";
      out.append(label)
          .append(Wrap.text(Columns.printable(stop.step() + " (line " + place.line() + ")" + answer), label.length(),
              label.length()))
          .append('\n');
    }
  }
}
