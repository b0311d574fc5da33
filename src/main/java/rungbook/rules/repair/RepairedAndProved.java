package rungbook.rules.repair;

import java.util.List;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/**
 * A path ends "repaired and proved" without a repair after a finding, with a repair that is not of the finding's
 * faults, or without a check after the repair; reports the first of these that applies.
 */
public final class RepairedAndProved extends StateRule {

  static final Code END_WITHOUT_REPAIR = Code.of("end-without-repair");
  static final Code FAULT_LEFT_IN_PLACE = Code.of("fault-left-in-place");
  static final Code REPAIR_NOT_CHECKED = Code.of("repair-not-checked");

  @Override
  public List<Code> codes() {
    return List.of(END_WITHOUT_REPAIR, FAULT_LEFT_IN_PLACE, REPAIR_NOT_CHECKED);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step instanceof Step.End end && end.result() == Step.Result.REPAIRED_AND_PROVED;
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    FactTable facts = context.state().facts();
    int repaired = facts.of(Fact.REPAIRED);
    int unchecked = facts.of(Fact.UNCHECKED);
    int left = left(facts, point);
    Problem problem = Problem.at(END_WITHOUT_REPAIR, step.source(), step.header().titleSpan());
    if (!point.must(repaired)) {
      out.add(problem.shownBy(point.showLacking(repaired, "")));
    } else if (left != FactTable.NONE) {
      Step.Finding finding = facts.repairs().finding(facts.words(left));
      out.add(Problem.at(FAULT_LEFT_IN_PLACE, finding.source(), finding.faults().get(0).span())
          .with("finding", finding.title()).with("end", step.title()).shownBy(point.showHolding(left, "")));
    } else if (point.may(unchecked)) {
      out.add(Problem.at(REPAIR_NOT_CHECKED, step.source(), step.header().titleSpan())
          .shownBy(point.showHolding(unchecked, "")));
    }
  }

  /** The first finding of which, on some path to here, nothing was repaired that its faults are in. */
  private static int left(FactTable facts, PathFacts.ProgramPoint point) {
    int left = point.nextMay(Fact.FAULT_LEFT, 0);
    while (left != FactTable.NONE && !facts.repairs().isLocated(facts.words(left))) {
      left = point.nextMay(Fact.FAULT_LEFT, left + 1);
    }
    return left;
  }
}
