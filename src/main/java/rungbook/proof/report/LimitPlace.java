package rungbook.proof.report;

import rungbook.source.Span;
import rungbook.tree.Answer;
import rungbook.tree.Step;

/** Where a limit is written. */
public final class LimitPlace {

  private LimitPlace() {}

  /** The answer in whose text the limit is written. */
  public static Span of(Step.MeterCheck check, Proof.Limit limit) {
    var upper = check.ways().get(limit.upperWay());
    boolean inUpper = upper.answer() instanceof Answer.Within within
        && within.range().low().filter(low -> low.compareTo(limit.at()) == 0).isPresent();
    return (inUpper ? upper : check.ways().get(limit.lowerWay())).answerSpan();
  }
}
