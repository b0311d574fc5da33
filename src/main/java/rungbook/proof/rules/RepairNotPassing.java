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

/** After a finding, the right repair ends "repaired and proved". Silent where the circuit does not model a check. */
final class RepairNotPassing implements ProofRule {

  static final Code REPAIR_NOT_PASSING = Code.of("repair-not-passing");

  /** A right repair may fail its check now and then: the reading is near a limit. */
  private static final double LEAST_PASSED = 0.97;

  @Override
  public List<Code> codes() {
    return List.of(REPAIR_NOT_PASSING);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (Proof.Repair repair : context.proof().repairs()) {
      List<Proof.RepairedFault> failing = repair.faults().stream().filter(fault -> fault.passed() < LEAST_PASSED)
          .toList();
      if (repair.unmodeled().isEmpty() && !failing.isEmpty()) {
        out.add(problem(context, repair, failing));
      }
    }
  }

  private static Problem problem(ProofRuleContext context, Proof.Repair repair, List<Proof.RepairedFault> failing) {
    Step finding = context.step(repair.finding());
    String faults = failing.stream()
        .map(fault -> fault.fault() + " (" + ReportNumbers.percent(1 - fault.passed()) + ", at " + fault.failsAt()
            + ")")
        .collect(Collectors.joining(", "));
    return Problem.at(REPAIR_NOT_PASSING, finding.source(), finding.header().titleSpan()).with("faults", faults)
        .shownBy(context.wayTo(new End.Finding(repair.finding()), failing.get(0).caseNumber()));
  }
}
