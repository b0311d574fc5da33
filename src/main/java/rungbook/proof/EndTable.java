package rungbook.proof;

import java.util.List;
import java.util.function.ToDoubleFunction;
import rungbook.proof.plan.ReachableFindings;
import rungbook.proof.propagation.ArrivalTable;
import rungbook.proof.propagation.End;
import rungbook.proof.report.EndShares;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Adds up where cases end. */
record EndTable(Tree tree, ReachableFindings findings, List<ArrivalTable.Arrivals> ends) {

  /** Of all drawn installations. */
  EndShares of(int caseNumber) {
    return sum(caseNumber, arrivals -> arrivals.shares()[caseNumber]);
  }

  /** Of those of one variant. */
  EndShares of(int caseNumber, int variant) {
    return sum(caseNumber, arrivals -> arrivals.byVariant()[variant][caseNumber]);
  }

  private EndShares sum(int caseNumber, ToDoubleFunction<ArrivalTable.Arrivals> share) {
    return ends.stream().map(arrivals -> one(arrivals.end(), caseNumber, share.applyAsDouble(arrivals)))
        .reduce(EndShares.NONE, EndShares::plus);
  }

  private EndShares one(End end, int caseNumber, double share) {
    if (end instanceof End.HandedOn) {
      return new EndShares(0, 0, 0, 0, share, 0);
    }
    if (end instanceof End.Ended) {
      return new EndShares(0, 0, 0, share, 0, 0);
    }
    return end instanceof End.Finding at ? finding((Step.Finding) tree.steps().get(at.step()), caseNumber, share)
        : new EndShares(0, 0, 0, 0, 0, share);
  }

  private EndShares finding(Step.Finding finding, int caseNumber, double share) {
    boolean names = findings.named(finding).get(caseNumber);
    boolean none = finding.faults().isEmpty();
    return new EndShares(names ? share : 0, !names && !none ? share : 0, finding.healthy() ? share : 0,
        !finding.healthy() && none ? share : 0, 0, 0);
  }
}
