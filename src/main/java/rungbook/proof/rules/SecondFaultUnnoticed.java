package rungbook.proof.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rungbook.proof.accounting.ReportNumbers;
import rungbook.proof.propagation.End;
import rungbook.proof.report.PairOutcome;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/**
 * Of two faults that the system says come together, the right repair of the first does not end "repaired and proved".
 * Silent where the circuit does not model a check.
 */
public final class SecondFaultUnnoticed implements ProofRule {

  public static final Code SECOND_FAULT_UNNOTICED = Code.of("second-fault-unnoticed");

  /** Of twenty units with the second fault left in, at most one may pass. A choice of this project, no source. */
  private static final double MOST_MISSED = 0.05;

  /** A second fault that was missed, and the pair that it is of. */
  private record Seen(PairOutcome pair, PairOutcome.Missed missed) {}

  @Override
  public List<Code> codes() {
    return List.of(SECOND_FAULT_UNNOTICED);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    Map<Integer, List<Seen>> byFinding = new LinkedHashMap<>();
    for (PairOutcome pair : context.proof().pairs()) {
      pair.missedAfter().stream().filter(missed -> missed.isKnown() && missed.share() > MOST_MISSED)
          .forEach(missed -> byFinding.computeIfAbsent(missed.finding(), any -> new ArrayList<>())
              .add(new Seen(pair, missed)));
    }
    byFinding.forEach((finding, seen) -> out.add(problem(context, finding, seen)));
  }

  private static Problem problem(ProofRuleContext context, int finding, List<Seen> seen) {
    Step step = context.step(finding);
    String pairs = seen.stream()
        .map(one -> one.pair().name() + " (" + ReportNumbers.percent(one.missed().share()) + ")")
        .collect(Collectors.joining(", "));
    return Problem.at(SECOND_FAULT_UNNOTICED, step.source(), step.header().titleSpan()).with("pairs", pairs)
        .shownBy(context.wayTo(new End.Finding(finding), seen.get(0).missed().caseNumber()));
  }
}
