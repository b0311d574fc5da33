package rungbook.proof.rules;

import java.util.List;
import java.util.stream.Collectors;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.propagation.End;
import rungbook.proof.report.Proof;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/**
 * After a finding, a repair that takes nothing away does not end "repaired and proved". Silent where the circuit does
 * not model a check.
 */
public final class WrongRepairUnnoticed implements ProofRule {

  public static final Code WRONG_REPAIR_UNNOTICED = Code.of("wrong-repair-unnoticed");

  /** Of twenty wrong repairs, at most one may pass. A choice of this project, no source. */
  private static final double LEAST_NOTICED = 0.95;

  @Override
  public List<Code> codes() {
    return List.of(WRONG_REPAIR_UNNOTICED);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (Proof.Repair repair : context.proof().repairs()) {
      if (repair.unmodeled().isEmpty() && repair.noticed() < LEAST_NOTICED) {
        out.add(problem(context, repair));
      }
    }
  }

  private static Problem problem(ProofRuleContext context, Proof.Repair repair) {
    Step finding = context.step(repair.finding());
    List<Proof.RepairedFault> passing = repair.faults().stream().filter(fault -> fault.noticed() < LEAST_NOTICED)
        .toList();
    String faults = passing.stream().map(fault -> fault.fault() + " (" + ReportNumbers.percent(1 - fault.noticed())
        + ")").collect(Collectors.joining(", "));
    return Problem.at(WRONG_REPAIR_UNNOTICED, finding.source(), finding.header().titleSpan()).with("faults", faults)
        .shownBy(context.wayTo(new End.Finding(repair.finding()), passing.get(0).caseNumber()));
  }
}
