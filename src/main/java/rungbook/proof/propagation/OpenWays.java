package rungbook.proof.propagation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import rungbook.proof.plan.ReachableFindings;
import rungbook.tree.Answer;
import rungbook.tree.Range;
import rungbook.tree.Step;

/** The ways that a case may take at a check that the circuit does not model. */
final class OpenWays {

  private static final BigDecimal JUST_INSIDE = new BigDecimal("1e-9");

  private final ReachableFindings findings;
  private final ReachableFindings.ByStep byStep;

  OpenWays(ReachableFindings findings, ReachableFindings.ByStep byStep) {
    this.findings = findings;
    this.byStep = byStep;
  }

  /**
   * The ways of a fault, or of the healthy system, which is case 0. A fault takes any way but those that reach
   * referrals only: no fault of the circuit smells of gas. The healthy system reads as expected, or gives an answer
   * from which a finding without a fault can be reached.
   */
  boolean[] of(Step step, int caseNumber) {
    boolean[] any = open(step, way -> true, way -> !findings.any(step.ways().get(way), byStep).isEmpty());
    if (caseNumber > 0) {
      return any;
    }
    boolean[] healthy = open(step, way -> any[way], way -> findings.any(step.ways().get(way), byStep).get(0));
    return step instanceof Step.MeterCheck check ? open(step, way -> healthy[way], way -> isExpected(check, way))
        : healthy;
  }

  /** The wanted ones; all that are allowed if none is wanted. */
  private static boolean[] open(Step step, IntPredicate allowed, IntPredicate wanted) {
    boolean[] open = new boolean[step.ways().size()];
    boolean any = IntStream.range(0, open.length).anyMatch(wanted);
    for (int way = 0; way < open.length; way++) {
      open[way] = any ? wanted.test(way) : allowed.test(way);
    }
    return open;
  }

  private static boolean isExpected(Step.MeterCheck check, int way) {
    return check.expected().map(OpenWays::inside)
        .filter(reading -> check.ways().get(way).answer() instanceof Answer.Within within
            && within.range().contains(reading))
        .isPresent();
  }

  /** A reading in the window. */
  private static BigDecimal inside(Range window) {
    if (window.low().isPresent() && window.high().isPresent()) {
      return window.low().get().add(window.high().get()).divide(BigDecimal.valueOf(2), RoundingMode.HALF_EVEN);
    }
    return window.low().map(low -> low.add(JUST_INSIDE))
        .orElseGet(() -> window.high().orElseThrow().subtract(JUST_INSIDE));
  }
}
