package rungbook.proof.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.source.Edit;
import rungbook.source.Fix;
import rungbook.source.Source;
import rungbook.source.Span;
import rungbook.tree.Answer;
import rungbook.tree.Range;
import rungbook.tree.Step;
import rungbook.tree.Way;

/** Moves a limit in the text of a tree to a better place. */
public final class LimitFix {

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

  private final Proof.Limit limit;
  private final Step.MeterCheck check;
  private final BigDecimal better;
  private final Map<BigDecimal, BigDecimal> moved = new TreeMap<>();

  private LimitFix(Proof.Limit limit, Step.MeterCheck check, BigDecimal better, BigDecimal digit) {
    this.limit = limit;
    this.check = check;
    this.better = better;
    moved.put(limit.at(), better);
    moved.put(limit.at().subtract(digit), better.subtract(digit)); // "0 to 19.9" beside "20 to 30"
  }

  /**
   * The fix that changes a limit wherever its number is written: in the answers on either side of it and in the
   * expected window. None if no limit separates the two sides, or if the new number would turn a range around or pass
   * the end of another answer.
   *
   * @param digit the last digit of the display
   */
  public static Optional<Fix> fix(Proof.Limit limit, Step.MeterCheck check, BigDecimal digit) {
    return limit.better().filter(better -> Bounds.leaveRoom(limit))
        .flatMap(better -> new LimitFix(limit, check, better, digit).fix());
  }

  private Optional<Fix> fix() {
    if (turnsARange() || passesAnotherAnswer()) {
      return Optional.empty();
    }
    List<Edit> edits = Stream
        .of(check.ways().get(limit.lowerWay()).answerSpan(), check.ways().get(limit.upperWay()).answerSpan(),
            check.expectedSpan())
        .flatMap(span -> edits(check.source(), span).stream()).toList();
    String label = "move the limit to " + ReportNumbers.number(better) + " " + check.quantity().unit();
    return edits.isEmpty() ? Optional.empty() : Optional.of(new Fix(label, edits));
  }

  private boolean turnsARange() {
    return Stream.concat(Stream.of(limit.lowerWay(), limit.upperWay()).map(check.ways()::get).flatMap(LimitFix::range),
        check.expected().stream()).anyMatch(this::turns);
  }

  private boolean turns(Range range) {
    return range.low().isPresent() && range.high().isPresent()
        && moved(range.low().get()).compareTo(moved(range.high().get())) >= 0;
  }

  private BigDecimal moved(BigDecimal end) {
    return moved.getOrDefault(end, end);
  }

  /** An answer beyond the two would overlap with one of them, or leave a gap. */
  private boolean passesAnotherAnswer() {
    BigDecimal least = limit.at().min(better);
    BigDecimal most = limit.at().max(better);
    return IntStream.range(0, check.ways().size()).filter(way -> way != limit.lowerWay() && way != limit.upperWay())
        .mapToObj(check.ways()::get).flatMap(LimitFix::range)
        .flatMap(range -> Stream.concat(range.low().stream(), range.high().stream()))
        .anyMatch(end -> end.compareTo(least) >= 0 && end.compareTo(most) <= 0);
  }

  private static Stream<Range> range(Way way) {
    return way.answer() instanceof Answer.Within within ? Stream.of(within.range()) : Stream.empty();
  }

  private List<Edit> edits(Source source, Span span) {
    var edits = new ArrayList<Edit>();
    Matcher number = NUMBER.matcher(source.text(span));
    while (number.find()) {
      BigDecimal written = new BigDecimal(number.group());
      if (moved.containsKey(written)) {
        edits.add(new Edit(source, new Span(span.start() + number.start(), span.start() + number.end()),
            ReportNumbers.number(moved(written))));
      }
    }
    return edits;
  }
}
