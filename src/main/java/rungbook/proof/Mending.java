package rungbook.proof;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.tree.Step;

/** Moves a limit in the text of a tree to a better place. */
public final class Mending {

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

  private Mending() {}

  /** What stands at a place is to read otherwise. */
  public record Edit(Source source, Span span, String text) {}

  /**
   * The edits that move a limit wherever its number stands: in the answers on either side of it and in the expected window. None
   * if no better place is known.
   */
  public static List<Edit> edits(Proof.Limit limit, Step.MeterCheck check) {
    var edits = new ArrayList<Edit>();
    limit.better().ifPresent(better -> Stream.of(check.ways().get(limit.lowerWay()).answerSpan(), check.ways().get(limit.upperWay()).answerSpan(),
        check.expectedSpan()).forEach(span -> edits.addAll(edits(check.source(), span, limit.at(), better))));
    return edits;
  }

  private static List<Edit> edits(Source source, Span span, BigDecimal from, BigDecimal to) {
    var edits = new ArrayList<Edit>();
    Matcher number = NUMBER.matcher(source.text(span));
    while (number.find()) {
      if (new BigDecimal(number.group()).compareTo(from) == 0) {
        edits.add(new Edit(source, new Span(span.start() + number.start(), span.start() + number.end()), Shown.number(to)));
      }
    }
    return edits;
  }

  /** The text with all edits made; they do not overlap. */
  public static String apply(String text, List<Edit> edits) {
    var changed = new StringBuilder(text);
    edits.stream().sorted((a, b) -> b.span().start() - a.span().start())
        .forEach(edit -> changed.replace(edit.span().start(), edit.span().end(), edit.text()));
    return changed.toString();
  }
}
