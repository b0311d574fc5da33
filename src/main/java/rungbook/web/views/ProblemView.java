package rungbook.web.views;

import java.util.List;
import java.util.stream.Collectors;
import rungbook.source.Fix;
import rungbook.source.Problem;
import rungbook.source.Witness;
import rungbook.source.Wording;
import rungbook.text.UrlPath;
import rungbook.text.InlineCode;

/**
 * A problem as pages and programs show it.
 *
 * @param from offset in the text, in UTF-16 units; {@code to} is behind its end
 * @param shownBy the reading, answers or path that shows it; empty without one
 * @param fix what a known change does that removes it, such as {@code write `#coil`}; empty without one
 * @param edits that change, all in the same file
 */
public record ProblemView(String file, int line, int column, int from, int to, String code, String severity,
    String says, String hint,
    String shownBy, String fix, List<EditView> edits) {

  public static List<ProblemView> of(List<Problem> problems) {
    return problems.stream().map(ProblemView::of).toList();
  }

  public static ProblemView of(Problem problem) {
    var wording = Wording.of(problem);
    return new ProblemView(problem.source().name(), problem.place().line(), problem.place().column(),
        problem.span().start(),
        problem.span().end(), problem.code().name(), wording.severity().word(), wording.sentence(problem),
        wording.hint(problem),
        problem.witness().map(ProblemView::words).orElse(""), problem.fix().map(Fix::label).orElse(""),
        problem.fix().map(EditView::of).orElse(List.of()));
  }

  /** The severity's letter, so that it does not show by color alone. */
  public String letter() {
    return severity.substring(0, 1).toUpperCase(java.util.Locale.ROOT);
  }

  public List<InlineCode.Part> sentence() {
    return InlineCode.parts(says);
  }

  public List<InlineCode.Part> advice() {
    return InlineCode.parts(hint);
  }

  public String fileHref() {
    return UrlPath.of(file);
  }

  private static String words(Witness witness) {
    if (witness instanceof Witness.Reading reading) {
      return "a reading of " + reading.shown();
    }
    if (witness instanceof Witness.Answers answers) {
      return "the answer " + String.join(", ", answers.words());
    }
    var path = (Witness.Path) witness;
    var start = path.variant().isEmpty() ? "this way: " : "this way, in the variant " + path.variant() + ": ";
    return path.stops().stream().map(ProblemView::stop).collect(Collectors.joining(" → ", start, ""));
  }

  private static String stop(Witness.Stop stop) {
    return stop.answer().isEmpty() ? stop.step() : stop.step() + " (" + stop.answer() + ")";
  }
}
