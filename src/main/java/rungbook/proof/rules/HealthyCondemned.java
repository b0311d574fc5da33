package rungbook.proof.rules;

import java.util.List;
import rungbook.proof.propagation.End;
import rungbook.proof.report.Proof;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** No healthy system ends at a finding that names a fault. */
final class HealthyCondemned implements ProofRule {

  static final Code HEALTHY_CONDEMNED = Code.of("healthy-condemned");

  @Override
  public List<Code> codes() {
    return List.of(HEALTHY_CONDEMNED);
  }

  @Override
  public void inspect(ProofRuleContext seen, Problems out) {
    for (Proof.Condemned condemned : seen.proof().condemned()) {
      Step finding = seen.step(condemned.finding());
      out.add(Problem.at(HEALTHY_CONDEMNED, finding.source(), finding.header().titleSpan())
          .with("share", condemned.shown()).with("finding", condemned.title())
          .with("circumstances", condemned.circumstances())
          .shownBy(seen.wayTo(new End.Finding(condemned.finding()), 0, condemned.sample())));
    }
  }
}
