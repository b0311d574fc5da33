package rungbook.proof.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.tree.Step;

/** Moves a limit in the text of a tree to a better place. */
public final class LimitFix {

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

  private LimitFix() {}

  /**
   * The fix that changes a limit wherever its number is written: in the answers on either side of it and in the
   * expected window. None if no limit separates the two sides.
   */
  public static Optional<Fix> fix(Proof.Limit limit, Step.MeterCheck check) {
    if (limit.better().isEmpty() || !Bounds.leaveRoom(limit)) {
      return Optional.empty();
    }
    BigDecimal better = limit.better().get();
    List<Edit> edits = Stream
        .of(check.ways().get(limit.lowerWay()).answerSpan(), check.ways().get(limit.upperWay()).answerSpan(),
            check.expectedSpan())
        .flatMap(span -> edits(check.source(), span, limit.at(), better).stream()).toList();
    String label = "move the limit to " + ReportNumbers.number(better) + " " + check.quantity().unit();
    return edits.isEmpty() ? Optional.empty() : Optional.of(new Fix(label, edits));
  }

  private static List<Edit> edits(Source source, Span span, BigDecimal from, BigDecimal to) {
    var edits = new ArrayList<Edit>();
    Matcher number = NUMBER.matcher(source.text(span));
    while (number.find()) {
      if (new BigDecimal(number.group()).compareTo(from) == 0) {
        edits.add(new Edit(source, new Span(span.start() + number.start(), span.start() + number.end()),
            ReportNumbers.number(to)));
      }
    }
    return edits;
  }
}
