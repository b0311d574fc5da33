package rungbook.proof.propagation;

import java.util.Arrays;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.plan.ReachableFindings;
import rungbook.tree.Step;

/** Which faults each way on of one tree can still find. */
final class ReachableFaults {

  private final ReachableFindings findings;
  private final ReachableFindings.ByStep byStep;

  ReachableFaults(ReachableFindings findings, ReachableFindings.ByStep byStep) {
    this.findings = findings;
    this.byStep = byStep;
  }

  CheckTally.NamedCases byWay(Step step) {
    return new CheckTally.NamedCases(step.ways().stream().map(way -> findings.own(way, byStep)).toList(),
        step.ways().stream().map(way -> findings.any(way, byStep)).toList());
  }

  /**
   * The ways that a fault of this system may take at a check that the circuit does not model. A way that reaches
   * referrals only is for something else: no fault of the circuit smells of gas.
   */
  boolean[] openWays(Step step) {
    boolean[] open = new boolean[step.ways().size()];
    boolean any = false;
    for (int way = 0; way < open.length; way++) {
      open[way] = !findings.any(step.ways().get(way), byStep).isEmpty();
      any |= open[way];
    }
    if (!any) {
      Arrays.fill(open, true);
    }
    return open;
  }
}
