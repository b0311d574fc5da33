package rungbook.rules.safety;

import java.util.List;
import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Action;
import rungbook.tree.Step;

/** A circuit is proved dead with a meter that was not proved on a known live source. */
public final class MeterNotProved extends DeadProofRule {

  static final Code METER_NOT_PROVED = Code.of("meter-not-proved");

  @Override
  public List<Code> codes() {
    return List.of(METER_NOT_PROVED);
  }

  @Override
  protected void inspect(Action proof, Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    if (step.actions().stream().noneMatch(action -> action.kind().begins(EquipmentCondition.METER_PROVED))) {
      out.add(Problem.at(METER_NOT_PROVED, step.source(), proof.thing().span()));
    }
  }
}
