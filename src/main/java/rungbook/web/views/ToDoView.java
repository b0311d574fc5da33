package rungbook.web.views;

import java.util.List;
import rungbook.proof.advice.AdviceText;
import rungbook.proof.advice.Recommendation;
import rungbook.source.Fix;
import rungbook.text.InlineCode;
import rungbook.text.UrlPath;

/**
 * One thing to do about a tree, as a page shows it.
 *
 * @param place the line, with the file if it is another than the tree's own
 * @param fix what one click in the editor does; empty where no known edit does it
 */
public record ToDoView(List<InlineCode.Part> what, List<InlineCode.Part> why, String place, String editHref,
    String fix) {

  /** @param path the tree's own file */
  public static ToDoView of(Recommendation one, String path) {
    var text = AdviceText.of(one);
    var problem = one.problem();
    var file = problem.source().name();
    var line = problem.place().line();
    return new ToDoView(InlineCode.parts(text.what()), InlineCode.parts(text.why().replace(" %", "\u00a0%")),
        file.equals(path) ? "line " + line : file + ":" + line, "/edit/" + UrlPath.of(file) + "?line=" + line,
        problem.fix().map(Fix::label).orElse(""));
  }
}
