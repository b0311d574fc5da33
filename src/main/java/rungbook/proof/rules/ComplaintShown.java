package rungbook.proof.rules;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.accounting.Share;
import rungbook.proof.plan.Population;
import rungbook.proof.report.Complaint;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.NameRef;
import rungbook.tree.Step;
import rungbook.tree.Symptoms;
import rungbook.tree.Tree;

/** Some fault gives the complaint, the healthy system does not, and the tree names only faults that do. */
final class ComplaintShown implements ProofRule {

  static final Code COMPLAINT_NOT_GIVEN = Code.of("complaint-not-given");
  static final Code COMPLAINT_OF_HEALTHY = Code.of("complaint-of-healthy");
  static final Code FAULT_NOT_IN_COMPLAINT = Code.of("fault-not-in-complaint");

  @Override
  public List<Code> codes() {
    return List.of(COMPLAINT_NOT_GIVEN, COMPLAINT_OF_HEALTHY, FAULT_NOT_IN_COMPLAINT);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    Complaint complaint = context.proof().complaint();
    complaint.symptoms().ifPresent(symptoms -> inspect(symptoms, complaint, context, out));
  }

  private static void inspect(Symptoms symptoms, Complaint complaint, ProofRuleContext context, Problems out) {
    Problem here = Problem.at(COMPLAINT_OF_HEALTHY, context.tree().source(), symptoms.span());
    if (Share.isReported(complaint.healthy())) {
      out.add(here.with("share", ReportNumbers.percent(complaint.healthy())));
    }
    if (!context.proofContext().population().hasFaults()) {
      out.add(Problem.at(COMPLAINT_NOT_GIVEN, context.tree().source(), symptoms.span())
          .with("complaint", Complaint.words(symptoms)));
      return;
    }
    findings(context.tree()).forEach(finding -> finding.faults().stream().filter(isOutside(context))
        .forEach(fault -> out.add(Problem.at(FAULT_NOT_IN_COMPLAINT, finding.source(), fault.span())
            .with("fault", fault.text()).with("complaint", Complaint.words(symptoms)))));
  }

  private static Stream<Step.Finding> findings(Tree tree) {
    return tree.steps().stream().filter(Step.Finding.class::isInstance).map(Step.Finding.class::cast);
  }

  private static Predicate<NameRef> isOutside(ProofRuleContext context) {
    List<String> cases = context.proofContext().installations().cases();
    Population population = context.proofContext().population();
    return fault -> IntStream.range(1, cases.size())
        .anyMatch(i -> cases.get(i).equals(fault.key()) && !population.has(i));
  }
}
