package rungbook.rules.safety;

import java.util.List;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.Fact;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A circuit is proved dead although, on some path, the power is not isolated. */
public final class ProvedBeforeIsolating extends StateRule {

  static final Code PROVED_BEFORE_ISOLATING = Code.of("proved-before-isolating");

  @Override
  public List<Code> codes() {
    return List.of(PROVED_BEFORE_ISOLATING);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return MeterNotProved.first(EquipmentCondition.PROVED_DEAD, step) >= 0;
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    int proof = MeterNotProved.first(EquipmentCondition.PROVED_DEAD, step);
    for (int action = 0; action < proof; action++) {
      point.pass();
    }
    if (!point.isPowerOff()) {
      out.add(Problem.at(PROVED_BEFORE_ISOLATING, step.source(), step.actions().get(proof).thing().span())
          .shownBy(point.showLacking(context.state().facts().of(Fact.POWER_OFF), "")));
    }
  }
}
