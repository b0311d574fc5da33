package rungbook.proof.rules;

import java.util.List;
import rungbook.proof.propagation.End;
import rungbook.proof.report.Proof;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** No healthy system ends at a finding that names a fault. */
public final class HealthyCondemned implements ProofRule {

  public static final Code HEALTHY_CONDEMNED = Code.of("healthy-condemned");

  @Override
  public List<Code> codes() {
    return List.of(HEALTHY_CONDEMNED);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (Proof.FalseAlarm alarm : context.proof().falseAlarms()) {
      Step finding = context.step(alarm.finding());
      out.add(Problem.at(HEALTHY_CONDEMNED, finding.source(), finding.header().titleSpan())
          .with("share", alarm.shown()).with("finding", alarm.title())
          .with("circumstances", alarm.circumstances())
          .shownBy(context.wayTo(new End.Finding(alarm.finding()), 0, alarm.sample())));
    }
  }
}
