package rungbook.proof.rules;

import java.util.ArrayList;
import java.util.List;
import rungbook.proof.accounting.Share;
import rungbook.proof.propagation.ArrivalTable;
import rungbook.proof.propagation.End;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Step;

/** Whatever the circuit gives, some answer takes it. */
final class AnswerLacking implements ProofRule {

  static final Code ANSWER_LACKING = Code.of("answer-lacking");

  @Override
  public List<Code> codes() {
    return List.of(ANSWER_LACKING);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (ArrivalTable.Arrivals arrivals : context.ends()) {
      if (arrivals.end() instanceof End.Stuck stuck && context.step(stuck.step()) instanceof Step.Check check) {
        inspect(arrivals, check, context, out);
      }
    }
  }

  private static void inspect(ArrivalTable.Arrivals arrivals, Step.Check check, ProofRuleContext context,
      Problems out) {
    List<String> stopped = new ArrayList<>();
    int first = -1;
    for (int i = 0; i < context.names().size(); i++) {
      if (Share.isReported(arrivals.shares()[i])) {
        stopped.add(context.names().get(i));
        first = first < 0 ? i : first;
      }
    }
    if (first >= 0) {
      Span span = check instanceof Step.MeterCheck meter ? meter.quantitySpan() : check.header().titleSpan();
      Problem problem = Problem.at(ANSWER_LACKING, check.source(), span).with("faults", String.join(", ", stopped));
      out.add(problem.shownBy(context.wayTo(arrivals.end(), first, arrivals.witness()[first])));
    }
  }
}
