package rungbook.proof.rules;

import java.util.List;
import java.util.Optional;
import rungbook.proof.plan.Situation;
import rungbook.proof.propagation.PossibleAnswers;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;
import rungbook.tree.StepTimer;

/** While a delay runs, a check does not find what it would find once the delay is over. */
final class ReadDuringDelay implements ProofRule {

  static final Code READ_DURING_DELAY = Code.of("read-during-delay");

  @Override
  public List<Code> codes() {
    return List.of(READ_DURING_DELAY);
  }

  @Override
  public void inspect(ProofRuleContext context, Problems out) {
    context.propagation().situations().forEach((number, situations) -> {
      if (context.step(number) instanceof Step.Check check && !lasts(check)) {
        situations.stream().flatMap(one -> inspect(number, check, one, context).stream()).findFirst()
            .ifPresent(out::add);
      }
    });
  }

  /** What is over soon is meant to be read before a delay ends. */
  private static boolean lasts(Step.Check check) {
    return check.timer().filter(timer -> timer.kind() == StepTimer.Kind.LASTS).isPresent();
  }

  private static Optional<Problem> inspect(int number, Step.Check check, Situation now, ProofRuleContext context) {
    Situation later = new Situation(context.proofContext().memory().afterDelays(now.state(), 0), now.place());
    Optional<PossibleAnswers.Changed> changed = later.equals(now) ? Optional.empty()
        : context.propagation().possibleAnswers().changed(number, now, later);
    return changed.map(answers -> Problem.at(READ_DURING_DELAY, check.source(), check.header().titleSpan())
        .with("now", answers.before()).with("later", answers.after())
        .shownBy(context.wayTo(number, new Situation(now.state().alone(), now.place()))));
  }
}
