package rungbook.rules.structure;

import rungbook.rules.Rule;
import rungbook.rules.Subject;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A check that leads the same way whatever is found tells nothing. */
public final class OneAnswer implements Rule {

  @Override
  public void inspect(Subject subject, Problems out) {
    for (Step step : subject.tree().steps()) {
      if (step instanceof Step.Check && step.ways().size() == 1 && step.particulars().section().unread().isEmpty()) {
        out.add(Problem.at("one-answer", step.source(), step.ways().get(0).answerSpan())
            .with("step", step.title()).with("answer", step.ways().get(0).written()));
      }
    }
  }
}
