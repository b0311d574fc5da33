package rungbook.rules.readings;

import java.util.List;
import java.util.OptionalInt;
import rungbook.source.Code;
import rungbook.source.Problems;
import rungbook.source.Witness;
import rungbook.tree.Answer;
import rungbook.tree.Readings.Taken;
import rungbook.tree.Readings;
import rungbook.tree.Way;

/** An answer is useful only if it accepts something that the others leave. */
public final class AnswerUnreachable extends ReadingsRule {

  static final Code ANSWER_UNREACHABLE = Code.of("answer-unreachable");

  @Override
  public List<Code> codes() {
    return List.of(ANSWER_UNREACHABLE);
  }

  @Override
  void inspect(Asked asked, Problems out) {
    boolean[] unreachable = find(asked);
    for (Taken span : asked.readings().spans()) {
      if (unreachable[span.way()]) {
        out.add(asked.atWay(ANSWER_UNREACHABLE, span.way())
            .shownBy(new Witness.Reading(asked.readings().show(span.from()))));
      }
    }
    inspectOthers(asked, out);
  }

  /** By way: whether the earlier ranges in the text cover its range. */
  static boolean[] find(Asked asked) {
    boolean[] unreachable = new boolean[asked.check().ways().size()];
    if (isDisjoint(asked.readings())) {
      return unreachable;
    }
    IntervalSet covered = new IntervalSet();
    for (Taken span : asked.readings().spans()) {
      if (!span.isEmpty()) {
        unreachable[span.way()] = covered.holdsAll(span) && !takesOverload(asked.readings(), span.way());
        covered.add(span);
      }
    }
    return unreachable;
  }

  private static boolean isDisjoint(Readings readings) {
    long next = Long.MIN_VALUE;
    for (Taken span : readings.fromLowToHigh()) {
      if (span.from() < next) {
        return false;
      }
      next = span.to() + 1;
    }
    return true;
  }

  private static boolean takesOverload(Readings readings, int way) {
    return readings.overloadWay().orElse(-1) == way;
  }

  /**
   * {@code OL}, {@code no reading} and {@code anything else} are useful once each, and the last only if something is
   * left.
   */
  private static void inspectOthers(Asked asked, Problems out) {
    Readings readings = asked.readings();
    for (int way = 0; way < asked.check().ways().size(); way++) {
      Way written = asked.way(way);
      boolean again = (written.answer() instanceof Answer.Overload && isOther(readings.overloadWay(), way))
          || (written.answer() instanceof Answer.NoReading && isOther(readings.noReadingWay(), way))
          || (written.answer() instanceof Answer.AnythingElse
              && (isOther(readings.elseWay(), way) || nothingIsLeft(asked)));
      if (again) {
        out.add(asked.atWay(ANSWER_UNREACHABLE, way));
      }
    }
  }

  private static boolean isOther(OptionalInt first, int way) {
    return first.orElseThrow() != way;
  }

  private static boolean nothingIsLeft(Asked asked) {
    Readings readings = asked.readings();
    IntervalSet covered = new IntervalSet();
    readings.spans().stream().filter(span -> !span.isEmpty()).forEach(covered::add);
    return asked.isSettled() && readings.overloadWay().isPresent() && readings.noReadingWay().isPresent()
        && covered.holdsAll(new Taken(0, readings.lowCount(), readings.highCount()));
  }
}
