package rungbook.rules.readings;

import java.util.List;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.source.Witness;
import rungbook.tree.Readings;

/** Every reading has a way on. Reports a gap at the answer below it, else at the answer above it. */
public final class ReadingGap extends ReadingsRule {

  static final Code READING_GAP = Code.of("reading-gap");

  @Override
  public List<Code> codes() {
    return List.of(READING_GAP);
  }

  @Override
  void inspect(Asked asked, Problems out) {
    if (asked.isSettled()) {
      for (Readings.Stretch gap : asked.readings().gaps()) {
        out.add(problem(asked, gap));
      }
    }
  }

  private static Problem problem(Asked asked, Readings.Stretch gap) {
    return asked.at(READING_GAP, place(asked, gap)).with("readings", asked.readings().show(gap))
        .shownBy(new Witness.Reading(asked.readings().show(telling(asked.readings(), gap))));
  }

  /**
   * A typical reading in a gap: its middle, or next to the limit if the gap extends to the end of the meter's range.
   */
  private static long telling(Readings readings, Readings.Stretch gap) {
    boolean toTop = gap.to() == readings.highCount();
    boolean toBottom = gap.from() == readings.lowCount();
    return toTop == toBottom ? gap.middle() : toTop ? gap.from() : gap.to();
  }

  private static Span place(Asked asked, Readings.Stretch gap) {
    Span above = asked.check().header().titleSpan();
    for (Readings.Taken span : asked.readings().fromLowToHigh()) {
      if (span.to() == gap.from() - 1) {
        return asked.way(span.way()).answerSpan();
      }
      above = span.from() == gap.to() + 1 ? asked.way(span.way()).answerSpan() : above;
    }
    return above;
  }
}
