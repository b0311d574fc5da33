package rungbook.rules.readings;

import rungbook.source.Problems;
import rungbook.source.Witness;
import rungbook.tree.Readings;
import rungbook.tree.Readings.Taken;

/** Every reading has one way on only. An answer that the ones before it take whole is {@link UnreachableReading}'s to report. */
public final class Overlap extends ReadingsRule {

  @Override
  void inspect(Asked asked, Problems out) {
    boolean[] unreachable = UnreachableReading.find(asked);
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
    out.add(asked.atWay("reading-overlap", later).with("other", asked.written(Math.min(lower.way(), upper.way())))
        .with("readings", asked.readings().show(both)).shownBy(new Witness.Reading(asked.readings().show(both.middle()))));
  }
}
