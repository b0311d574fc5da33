package rungbook.rules.structure;

import java.util.List;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A check with the same target for every answer is useless. */
public final class OneAnswer implements Rule {

  static final Code ONE_ANSWER = Code.of("one-answer");

  @Override
  public List<Code> codes() {
    return List.of(ONE_ANSWER);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    for (Step step : context.tree().steps()) {
      if (step instanceof Step.Check && step.ways().size() == 1 && step.header().section().unread().isEmpty()) {
        out.add(Problem.at(ONE_ANSWER, step.source(), step.ways().get(0).answerSpan())
            .with("step", step.title()).with("answer", step.ways().get(0).written()));
      }
    }
  }
}
