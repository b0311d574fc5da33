package rungbook.rules.repair;

import java.util.List;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.FactTable;
import rungbook.rules.flow.PathFacts;
import rungbook.rules.flow.Repairs;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Action;
import rungbook.tree.Step;

/** After a finding, on some path, a part is repaired or replaced that none of the finding's faults is in. */
public final class RepairElsewhere extends StateRule {

  static final Code REPAIR_ELSEWHERE = Code.of("repair-elsewhere");

  @Override
  public List<Code> codes() {
    return List.of(REPAIR_ELSEWHERE);
  }

  @Override
  protected boolean concerns(RuleContext context) {
    return context.state().facts().repairs().any();
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return step.actions().stream().anyMatch(RepairElsewhere::repairs);
  }

  private static boolean repairs(Action action) {
    return action.kind().begins(EquipmentCondition.REPAIRED);
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    for (Action action : step.actions()) {
      if (repairs(action)) {
        inspect(action, step, context.state().facts(), point, out);
      }
      point.pass();
    }
  }

  private static void inspect(Action action, Step step, FactTable facts, PathFacts.ProgramPoint point, Problems out) {
    Repairs repairs = facts.repairs();
    for (int passed = point.nextMay(Fact.FOUND_AT, 0); passed != FactTable.NONE; passed = point.nextMay(Fact.FOUND_AT,
        passed + 1)) {
      String id = facts.words(passed);
      if (repairs.isLocated(id) && !repairs.isAt(id, action.key())) {
        out.add(Problem.at(REPAIR_ELSEWHERE, step.source(), action.thing().span())
            .with("thing", action.thing().text()).with("finding", repairs.finding(id).title())
            .shownBy(point.showHolding(passed, "")));
        return;
      }
    }
  }
}
