package rungbook.proof.rules;

import java.util.List;
import java.util.Objects;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.plan.Situation;
import rungbook.proof.plan.StateText;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;

/** In the state in which a check is met, the healthy system reads what the text expects of it. */
final class ExpectationNotMet implements ProofRule {

  static final Code EXPECTATION_NOT_MET = Code.of("expectation-not-met");

  @Override
  public List<Code> codes() {
    return List.of(EXPECTATION_NOT_MET);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    for (CheckTally tally : context.propagation().tallies().values()) {
      if (tally.healthyNeverInside()) {
        Situation situation = Objects.requireNonNull(context.propagation().situations().get(tally.step())).get(0);
        out.add(Problem.at(EXPECTATION_NOT_MET, tally.check().source(), tally.check().expectedSpan())
            .with("reading", tally.healthyExample())
            .with("state", StateText.of(situation.state(), context.proofContext().start().state()))
            .with("expected", tally.check().source().text(tally.check().expectedSpan())));
      }
    }
  }
}
