package rungbook.rules.readings;

import java.util.List;
import java.util.Optional;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Answer;
import rungbook.tree.Meter;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.Way;

/** A rule about the answers of one meter check. */
abstract class ReadingsRule implements Rule {

  @Override
  public final void inspect(RuleContext context, Problems out) {
    List<Step> steps = context.tree().steps();
    for (int i = 0; i < steps.size(); i++) {
      Optional<Readings> readings = context.readings().get(i);
      if (readings.isPresent()) {
        Step.MeterCheck check = (Step.MeterCheck) steps.get(i);
        inspect(new Asked(check, readings.get(), context.tree().meter().scale(check.quantity()).orElseThrow()), out);
      }
    }
  }

  abstract void inspect(Asked asked, Problems out);

  /** A check, the readings that its answers accept, and the scale of the meter. */
  record Asked(Step.MeterCheck check, Readings readings, Meter.Scale scale) {

    /** Whether every answer could be read and there are at least two; if not, that is reported separately. */
    boolean isSettled() {
      for (Way way : check.ways()) {
        if (way.answer() instanceof Answer.Unreadable) {
          return false;
        }
      }
      int written = check.header().section().ways().size();
      return written > 1 && written <= Step.MOST_ANSWERS && check.header().section().unread().isEmpty();
    }

    Problem at(Code code, Span span) {
      return Problem.at(code, check.source(), span);
    }

    Problem atWay(Code code, int way) {
      return at(code, way(way).answerSpan()).with("answer", written(way));
    }

    Way way(int way) {
      return check.ways().get(way);
    }

    String written(int way) {
      return way(way).written();
    }

    /** The range of the meter: {@code 0.0 to 600.0 V}. */
    String shownRange() {
      return readings.show(new Readings.Stretch(readings.lowCount(), readings.highCount()));
    }

    String digit() {
      return readings.show(1);
    }
  }
}
