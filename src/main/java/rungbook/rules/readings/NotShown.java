package rungbook.rules.readings;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Answer;
import rungbook.tree.Range;

/** Answers and expected windows stay within what the meter can show. */
public final class NotShown extends ReadingsRule {

  static final Code RANGE_BEYOND_METER = Code.of("range-beyond-meter");
  static final Code READING_NOT_SHOWN = Code.of("reading-not-shown");

  @Override
  public List<Code> codes() {
    return List.of(RANGE_BEYOND_METER, READING_NOT_SHOWN);
  }

  @Override
  void inspect(Asked asked, Problems out) {
    for (int way = 0; way < asked.check().ways().size(); way++) {
      if (asked.way(way).answer() instanceof Answer.Within within) {
        boolean takesOverload = asked.readings().overloadWay().orElse(-1) == way;
        boolean shown = takesOverload || !asked.readings().stretch(within.range()).isEmpty();
        report(asked, within.range(), shown, asked.way(way).answerSpan(), out);
      }
    }
    asked.check().expected().ifPresent(window -> report(asked, window, !asked.readings().stretch(window).isEmpty(),
        asked.check().expectedSpan(), out));
  }

  private static void report(Asked asked, Range range, boolean shown, Span span, Problems out) {
    if (!shown) {
      out.add(problem(READING_NOT_SHOWN, asked, span));
    } else if (isBeyond(range.low(), asked) || isBeyond(range.high(), asked)) {
      out.add(problem(RANGE_BEYOND_METER, asked, span));
    }
  }

  private static boolean isBeyond(Optional<BigDecimal> end, Asked asked) {
    return end.isPresent()
        && (end.get().compareTo(asked.scale().low()) < 0 || end.get().compareTo(asked.scale().high()) > 0);
  }

  private static Problem problem(Code code, Asked asked, Span span) {
    return asked.at(code, span).with("written", asked.check().source().text(span))
        .with("quantity", asked.check().quantity().words())
        .with("range", asked.shownRange())
        .with("digit", asked.digit());
  }
}
