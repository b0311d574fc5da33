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

/**
 * A finding follows a finding on some path, so the first one was a guess. A referral may follow, for work that goes
 * wrong.
 */
public final class FindingAfterFinding extends StateRule {

  static final Code FINDING_AFTER_FINDING = Code.of("finding-after-finding");

  @Override
  public List<Code> codes() {
    return List.of(FINDING_AFTER_FINDING);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.state().facts().repairs().any();
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step instanceof Step.Finding finding && finding.refer().isEmpty();
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    PathFacts state = context.state();
    if (point.may(state.facts().of(Fact.FOUND))) {
      int first = point.nextMay(Fact.FOUND_AT, 0);
      out.add(Problem.at(FINDING_AFTER_FINDING, step.source(), step.header().titleSpan())
          .with("first", state.facts().repairs().finding(state.facts().words(first)).title())
          .shownBy(point.showHolding(first, "")));
    }
  }
}
