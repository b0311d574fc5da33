package rungbook.rules.structure;

import java.util.List;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/**
 * Every path ends in a finding or an end, so every other step has a way on. Ways that could not be read are reported
 * at their place.
 */
public final class NoWayOn implements Rule {

  static final Code NO_WAY_ON = Code.of("no-way-on");

  @Override
  public List<Code> codes() {
    return List.of(NO_WAY_ON);
  }

  @Override
  public void inspect(RuleContext context, Problems out) {
    for (Step step : context.tree().steps()) {
      if (step.ways().isEmpty() && !step.isLast() && step.header().section().unread().isEmpty()) {
        out.add(Problem.at(NO_WAY_ON, step.source(), step.header().titleSpan())
            .with("step", step.title()).with("kind", step.header().block().kind()));
      }
    }
  }
}
