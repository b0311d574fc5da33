package rungbook.rules.safety;

import java.util.List;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * A fuse is replaced twice on a path without a search for the short: no ohms measured and nothing disconnected in
 * between.
 */
public final class FuseAgain extends StateRule {

  static final Code FUSE_AGAIN = Code.of("fuse-again");

  @Override
  public List<Code> codes() {
    return List.of(FUSE_AGAIN);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.state().facts().any(Fact.FUSE_REPLACED);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return !step.actions().isEmpty();
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    for (Action action : step.actions()) {
      inspect(action, step, context.state(), point, out);
      point.pass();
    }
  }

  private static void inspect(Action action, Step step, PathFacts state, PathFacts.ProgramPoint point, Problems out) {
    boolean replaces = action.kind().begins(EquipmentCondition.REPLACED);
    int replaced = replaces ? state.facts().of(Fact.FUSE_REPLACED, action.key()) : FactTable.NONE;
    if (point.may(replaced)) {
      Problem problem = Problem.at(FUSE_AGAIN, step.source(), action.thing().span()).with("fuse",
          action.thing().text());
      out.add(problem.shownBy(point.showHolding(replaced, "")));
    }
  }
}
