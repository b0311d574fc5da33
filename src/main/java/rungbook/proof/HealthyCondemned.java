package rungbook.proof;

import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** No healthy system ends at a finding that names a fault. */
final class HealthyCondemned implements ProofRule {

  @Override
  public void inspect(Inspection seen, Problems out) {
    for (Ends.Arrivals arrivals : seen.ends()) {
      int sample = arrivals.witness()[0];
      if (sample >= 0 && arrivals.end() instanceof End.Finding end && seen.step(end.step()) instanceof Step.Finding finding && !finding.faults().isEmpty()) {
        double share = arrivals.shares()[0];
        Problem problem = Problem.at("healthy-condemned", finding.source(), finding.particulars().titleSpan())
            .with("share", share == 0 ? "the worst" : Shown.percent(share)).with("finding", finding.title())
            .with("circumstances", seen.circumstances(0, sample));
        out.add(Inspection.shown(problem, seen.wayTo(end, 0, sample)));
      }
    }
  }
}
