package rungbook.rules.repair;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A path ends "left off and tagged", and no power source is tagged out on it. */
public final class EndNotTagged extends StateRule {

  static final Code END_NOT_TAGGED = Code.of("end-not-tagged");

  @Override
  public List<Code> codes() {
    return List.of(END_NOT_TAGGED);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step instanceof Step.End end && end.result() == Step.Result.LEFT_OFF_AND_TAGGED;
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    int tagged = context.state().facts().of(Fact.TAGGED_OUT);
    if (!point.must(tagged)) {
      out.add(Problem.at(END_NOT_TAGGED, step.source(), step.header().titleSpan())
          .shownBy(point.showLacking(tagged, "")));
    }
  }
}
