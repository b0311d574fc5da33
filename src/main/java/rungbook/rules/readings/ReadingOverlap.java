package rungbook.rules.readings;

import java.util.List;
import rungbook.source.Code;
import rungbook.source.Problems;
import rungbook.source.Witness;
import rungbook.tree.Readings.Taken;
import rungbook.tree.Readings;

/**
 * Every reading has only one way on. {@link AnswerUnreachable} reports an answer that the earlier ones cover
 * completely.
 */
public final class ReadingOverlap extends ReadingsRule {

  static final Code READING_OVERLAP = Code.of("reading-overlap");

  @Override
  public List<Code> codes() {
    return List.of(READING_OVERLAP);
  }

  @Override
  void inspect(Asked asked, Problems out) {
    boolean[] unreachable = AnswerUnreachable.find(asked);
    Taken farthest = null;
    for (Taken span : asked.readings().fromLowToHigh()) {
      if (!unreachable[span.way()]) {
        if (farthest != null && span.from() <= farthest.to()) {
          report(asked, farthest, span, out);
        }
        farthest = farthest == null || span.to() > farthest.to() ? span : farthest;
      }
    }
  }

  private static void report(Asked asked, Taken lower, Taken upper, Problems out) {
    var both = new Readings.Stretch(upper.from(), Math.min(lower.to(), upper.to()));
    int later = Math.max(lower.way(), upper.way());
    out.add(asked.atWay(READING_OVERLAP, later).with("other", asked.written(Math.min(lower.way(), upper.way())))
        .with("readings", asked.readings().show(both))
        .shownBy(new Witness.Reading(asked.readings().show(both.middle()))));
  }
}
