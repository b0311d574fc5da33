package rungbook.proof.rules;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.propagation.ArrivalTable;
import rungbook.proof.propagation.End;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A fault that arrives at a finding that names faults is among them. */
public final class FaultFoundWrongly implements ProofRule {

  public static final Code FAULT_FOUND_WRONGLY = Code.of("fault-found-wrongly");

  @Override
  public List<Code> codes() {
    return List.of(FAULT_FOUND_WRONGLY);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (ArrivalTable.Arrivals arrivals : context.ends()) {
      if (arrivals.end() instanceof End.Finding end && context.step(end.step()) instanceof Step.Finding finding
          && !finding.faults().isEmpty()) {
        inspect(arrivals, finding, context, out);
      }
    }
  }

  private static void inspect(ArrivalTable.Arrivals arrivals, Step.Finding finding, ProofRuleContext context,
      Problems out) {
    BitSet named = context.named(finding);
    List<String> wrong = new ArrayList<>();
    int first = -1;
    for (int i = 1; i < context.names().size(); i++) {
      if (!named.get(i) && context.isReported(arrivals, i)) {
        wrong.add(context.names().get(i) + " (" + ReportNumbers.percent(arrivals.shares()[i])
            + context.onlyIn(arrivals, i) + ")");
        first = first < 0 ? i : first;
      }
    }
    if (first >= 0) {
      Problem problem = Problem.at(FAULT_FOUND_WRONGLY, finding.source(), finding.header().titleSpan())
          .with("faults", String.join(", ", wrong));
      out.add(problem.shownBy(context.wayTo(arrivals.end(), first, arrivals.witness()[first])));
    }
  }
}
