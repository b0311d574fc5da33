package rungbook.proof.rules;

import java.util.List;
import java.util.Objects;
import rungbook.proof.accounting.CheckTally;
import rungbook.proof.plan.Situation;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.tree.Step;

/** Each answer of a check is given by somebody; a check of which only one is ever given tells nothing. */
final class WaysNotTaken implements ProofRule {

  static final Code ANSWER_IMPOSSIBLE = Code.of("answer-impossible");
  static final Code CHECK_TELLS_NOTHING = Code.of("check-tells-nothing");
  static final Code WAY_UNTAKEN = Code.of("way-untaken");

  @Override
  public List<Code> codes() {
    return List.of(ANSWER_IMPOSSIBLE, CHECK_TELLS_NOTHING, WAY_UNTAKEN);
  }

  @Override
  public void inspect(ProofRuleContext seen, Problems out) {
    for (int step = 0; step < seen.tree().steps().size(); step++) {
      boolean modeled = !seen.walker().unmodelled.containsKey(step);
      if (modeled && seen.walker().flow.reached(step) && seen.step(step) instanceof Step.Check check
          && check.ways().size() > 1) {
        inspect(step, check, seen, out);
      }
    }
  }

  private static void inspect(int step, Step.Check check, ProofRuleContext seen, Problems out) {
    int taken = 0;
    for (int way = 0; way < check.ways().size(); way++) {
      taken += isTaken(step, way, check, seen) ? 1 : 0;
    }
    if (taken == 1) {
      Span span = check instanceof Step.MeterCheck meter ? meter.quantitySpan()
          : ((Step.SenseCheck) check).things().get(0).span();
      out.add(Problem.at(CHECK_TELLS_NOTHING, check.source(), span).with("check", check.title()));
      return;
    }
    for (int way = 0; way < check.ways().size() && taken > 1; way++) {
      if (!isTaken(step, way, check, seen)) {
        out.add(Problem
            .at(canBeGiven(step, way, check, seen) ? WAY_UNTAKEN : ANSWER_IMPOSSIBLE, check.source(),
                check.ways().get(way).answerSpan())
            .with("answer", check.ways().get(way).written()));
      }
    }
  }

  private static boolean isTaken(int step, int way, Step.Check check, ProofRuleContext seen) {
    CheckTally tally = seen.walker().tallies.get(check);
    if (tally != null) {
      return tally.everTaken[way];
    }
    for (int i = 0; i < seen.names().size(); i++) {
      if (seen.walker().flow.taken(step, way, i) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether any fault would give the answer, were it to come here. */
  private static boolean canBeGiven(int step, int way, Step.Check check, ProofRuleContext seen) {
    for (Situation stand : Objects.requireNonNull(seen.walker().stands.get(step))) {
      for (int i = 0; i < seen.names().size(); i++) {
        if (seen.walker().wouldTake(check, stand, i, way)) {
          return true;
        }
      }
    }
    return false;
  }
}
