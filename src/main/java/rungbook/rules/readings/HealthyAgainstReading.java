package rungbook.rules.readings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.HealthyEnds;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Answer;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.Way;

/** After a reading outside the expected window, a tree comes to nothing but {@code healthy: yes}. */
public final class HealthyAgainstReading implements Rule {

  static final Code HEALTHY_AGAINST_READING = Code.of("healthy-against-reading");

  @Override
  public List<Code> codes() {
    return List.of(HEALTHY_AGAINST_READING);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    List<Step> steps = context.tree().steps();
    if (steps.stream().noneMatch(HealthyEnds::isHealthy)) {
      return;
    }
    HealthyEnds ends = HealthyEnds.of(context.tree());
    for (int step = 0; step < steps.size(); step++) {
      Optional<Readings> readings = context.readings().get(step);
      if (readings.isPresent() && context.graph().isReached(step)) {
        inspect((Step.MeterCheck) steps.get(step), readings.get(), ends, out);
      }
    }
  }

  private static void inspect(Step.MeterCheck check, Readings readings, HealthyEnds ends, Problems out) {
    for (int way = 0; way < check.ways().size(); way++) {
      Way answer = check.ways().get(way);
      if (isOutside(way, check, readings) && ends.isCertain(answer.target())) {
        out.add(Problem.at(HEALTHY_AGAINST_READING, check.source(), answer.span()).with("answer", answer.written())
            .with("expect", check.source().text(check.expectedSpan())));
      }
    }
  }

  /** Whether no reading of the expected window takes a way. If the window is split, that is reported separately. */
  private static boolean isOutside(int way, Step.MeterCheck check, Readings readings) {
    if (check.expected().isEmpty() || check.ways().get(way).answer() instanceof Answer.Unreadable) {
      return false;
    }
    Readings.Stretch window = readings.stretch(check.expected().get());
    boolean overload = check.expected().get().high().isEmpty()
        && readings.wayOfOverload().equals(OptionalInt.of(way));
    return !window.isEmpty() && !overload && !readings.wayOf(window.from()).equals(OptionalInt.of(way))
        && !readings.wayOf(window.to()).equals(OptionalInt.of(way));
  }
}
