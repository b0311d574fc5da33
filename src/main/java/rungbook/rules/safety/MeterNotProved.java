package rungbook.rules.safety;

import java.util.List;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A circuit is proved dead with a meter that was not proved on a known live source. */
public final class MeterNotProved extends StateRule {

  static final Code METER_NOT_PROVED = Code.of("meter-not-proved");

  @Override
  public List<Code> codes() {
    return List.of(METER_NOT_PROVED);
  }

  @Override
  protected boolean concerns(Step step, RuleContext context) {
    return first(EquipmentCondition.PROVED_DEAD, step) >= 0 && first(EquipmentCondition.METER_PROVED, step) < 0;
  }

  @Override
  protected void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    out.add(Problem.at(METER_NOT_PROVED, step.source(),
        step.actions().get(first(EquipmentCondition.PROVED_DEAD, step)).thing().span()));
  }

  /** The index of a step's first action that makes a condition true; negative if there is none. */
  static int first(EquipmentCondition begun, Step step) {
    for (int i = 0; i < step.actions().size(); i++) {
      if (step.actions().get(i).kind().begins(begun)) {
        return i;
      }
    }
    return -1;
  }
}
