package rungbook.proof.propagation;

import rungbook.proof.accounting.CheckTally;
import rungbook.proof.plan.ReachableFindings;
import rungbook.tree.Step;

/** Which faults each way on of one tree can still find. */
final class ReachableFaults {

  private final ReachableFindings findings;
  private final ReachableFindings.ByStep byStep;
  private final OpenWays openWays;

  ReachableFaults(ReachableFindings findings, ReachableFindings.ByStep byStep) {
    this.findings = findings;
    this.byStep = byStep;
    this.openWays = new OpenWays(findings, byStep);
  }

  CheckTally.NamedCases byWay(Step step) {
    return new CheckTally.NamedCases(step.ways().stream().map(way -> findings.own(way, byStep)).toList(),
        step.ways().stream().map(way -> findings.any(way, byStep)).toList());
  }

  /** The ways that a case may take at a check that the circuit does not model. */
  boolean[] openWays(Step step, int caseNumber) {
    return openWays.of(step, caseNumber);
  }
}
