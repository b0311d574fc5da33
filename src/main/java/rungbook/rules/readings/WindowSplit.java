package rungbook.rules.readings;

import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import rungbook.source.Code;
import rungbook.source.Problems;
import rungbook.source.Witness;
import rungbook.tree.Readings;

/**
 * All readings of a healthy system take the same way. If part of the window has no way on, the gap is reported instead.
 */
public final class WindowSplit extends ReadingsRule {

  static final Code WINDOW_SPLIT = Code.of("window-split");

  @Override
  public List<Code> codes() {
    return List.of(WINDOW_SPLIT);
  }

  @Override
  void inspect(Asked asked, Problems out) {
    if (asked.check().expected().isEmpty() || !asked.isSettled()) {
      return;
    }
    Readings readings = asked.readings();
    Readings.Stretch window = readings.stretch(asked.check().expected().get());
    OptionalLong other = window.isEmpty() ? OptionalLong.empty() : firstElsewhere(readings, window);
    if (other.isPresent()) {
      out.add(asked.at(WINDOW_SPLIT, asked.check().expectedSpan())
          .with("expect", asked.check().source().text(asked.check().expectedSpan()))
          .with("first", asked.written(readings.wayOf(window.from()).orElseThrow()))
          .with("second", asked.written(readings.wayOf(other.getAsLong()).orElseThrow()))
          .shownBy(new Witness.Reading(readings.show(other.getAsLong()))));
    }
  }

  /** The lowest count in the window that takes another way than its low end; empty if some count has no way on. */
  private static OptionalLong firstElsewhere(Readings readings, Readings.Stretch window) {
    OptionalInt first = readings.wayOf(window.from());
    long found = Long.MAX_VALUE;
    for (Readings.Taken span : readings.spans()) {
      for (long count : new long[] {span.from(), span.to() + 1}) {
        if (count > window.from() && count <= window.to()) {
          OptionalInt way = readings.wayOf(count);
          if (way.isEmpty()) {
            return OptionalLong.empty();
          }
          found = way.equals(first) ? found : Math.min(found, count);
        }
      }
    }
    return first.isEmpty() || found == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(found);
  }
}
