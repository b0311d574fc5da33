package rungbook.proof.rules;

import java.util.List;
import java.util.stream.Collectors;
import rungbook.proof.accounting.Share;
import rungbook.proof.propagation.ArrivalTable;
import rungbook.proof.propagation.End;
import rungbook.proof.report.Proof;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.NameRef;
import rungbook.tree.Step;

/** A fault that a finding names arrives at such a finding in some installation at least. */
public final class FaultNeverFound implements ProofRule {

  public static final Code FAULT_NEVER_FOUND = Code.of("fault-never-found");

  @Override
  public List<Code> codes() {
    return List.of(FAULT_NEVER_FOUND);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (Step step : context.tree().steps()) {
      if (step instanceof Step.Finding finding) {
        finding.faults().forEach(fault -> inspect(finding, fault, context, out));
      }
    }
  }

  private static void inspect(Step.Finding finding, NameRef fault, ProofRuleContext context, Problems out) {
    int number = context.proofContext().installations().cases().indexOf(fault.key());
    if (number > 0 && context.proofContext().population().has(number) && !isFound(number, context)) {
      String instead = context.proof().endings().stream()
          .filter(ending -> ending.arrived().stream()
              .anyMatch(one -> one.fault().equals(context.names().get(number)) && Share.isReported(one.share())))
          .map(Proof.Ending::title).collect(Collectors.joining("`, `"));
      int sample = 0;
      End end = null;
      for (ArrivalTable.Arrivals arrivals : context.ends()) {
        if (end == null && arrivals.witness()[number] >= 0) {
          end = arrivals.end();
          sample = arrivals.witness()[number];
        }
      }
      Problem problem = Problem.at(FAULT_NEVER_FOUND, finding.source(), fault.span()).with("fault", fault.text())
          .with("instead", instead);
      out.add(end == null ? problem : problem.shownBy(context.wayTo(end, number, sample)));
    }
  }

  private static boolean isFound(int number, ProofRuleContext context) {
    return context.ends().stream()
        .anyMatch(arrivals -> arrivals.witness()[number] >= 0 && arrivals.end() instanceof End.Finding end
            && context.named((Step.Finding) context.step(end.step())).get(number));
  }
}
