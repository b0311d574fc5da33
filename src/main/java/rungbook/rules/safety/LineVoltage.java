package rungbook.rules.safety;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import rungbook.action.ActionObject;
import rungbook.rules.state.Sources;
import rungbook.source.Span;
import rungbook.system.Vocabulary;
import rungbook.tree.Action;
import rungbook.tree.Answer;
import rungbook.tree.Meter;
import rungbook.tree.NameRef;
import rungbook.tree.Range;
import rungbook.tree.Step;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** Whether the leads of a step meet 50 V or more. */
public final class LineVoltage {

  private static final BigDecimal LIMIT = BigDecimal.valueOf(Vocabulary.LINE_VOLTS);

  private LineVoltage() {}

  /** The lead, the point or the reading that shows it; empty if the step meets no line voltage. */
  public static Optional<Span> met(Step step, Tree tree) {
    Optional<Vocabulary> system = tree.system();
    if (step instanceof Step.MeterCheck check && !check.quantity().needsDeadCircuit()) {
      Optional<Span> lead = marked(check.leads(), system);
      return lead.isPresent() || !check.quantity().isVolts() ? lead : named(check, tree.meter());
    }
    for (Action action : step.actions()) {
      if (action.kind().object() == ActionObject.POINT && Sources.isLineVoltage(system, action.key())) {
        return Optional.of(action.thing().span());
      }
    }
    return Optional.empty();
  }

  private static Optional<Span> marked(List<NameRef> leads, Optional<Vocabulary> system) {
    for (NameRef lead : leads) {
      if (Sources.isLineVoltage(system, lead.key())) {
        return Optional.of(lead.span());
      }
    }
    return Optional.empty();
  }

  /**
   * The place where a check names a reading of 50 V or more. The end of the meter's range does not count: it is not an
   * expected reading.
   */
  private static Optional<Span> named(Step.MeterCheck check, Meter meter) {
    Optional<BigDecimal> most = meter.scale(check.quantity()).map(Meter.Scale::high);
    if (check.expected().isPresent() && reaches(check.expected().get(), most)) {
      return Optional.of(check.expectedSpan());
    }
    for (Way way : check.ways()) {
      if (way.answer() instanceof Answer.Within within && reaches(within.range(), most)) {
        return Optional.of(way.answerSpan());
      }
    }
    return Optional.empty();
  }

  private static boolean reaches(Range range, Optional<BigDecimal> most) {
    boolean high = range.high().isPresent() && range.high().get().compareTo(LIMIT) >= 0
        && (most.isEmpty() || range.high().get().compareTo(most.get()) < 0);
    return high || (range.low().isPresent() && range.low().get().compareTo(LIMIT) >= 0);
  }
}
