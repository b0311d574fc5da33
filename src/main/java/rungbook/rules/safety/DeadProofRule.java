package rungbook.rules.safety;

import rungbook.action.EquipmentCondition;
import rungbook.rules.api.RuleContext;
import rungbook.rules.api.StateRule;
import rungbook.rules.flow.PathFacts;
import rungbook.source.Problems;
import rungbook.tree.Action;
import rungbook.tree.Step;

/** A rule about the state in which a circuit is proved dead. */
abstract class DeadProofRule extends StateRule {

  @Override
  protected final boolean concerns(Step step, RuleContext context) {
    return proof(step) >= 0;
  }

  @Override
  protected final void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out) {
    int proof = proof(step);
    for (int action = 0; action < proof; action++) {
      point.pass();
    }
    inspect(step.actions().get(proof), step, context, point, out);
  }

  /**
   * @param proof the first of the step's actions that prove dead
   * @param point the state before it
   */
  protected abstract void inspect(Action proof, Step step, RuleContext context, PathFacts.ProgramPoint point,
      Problems out);

  /** The index of the first action that proves dead; negative if there is none. */
  private static int proof(Step step) {
    for (int i = 0; i < step.actions().size(); i++) {
      if (step.actions().get(i).kind().begins(EquipmentCondition.PROVED_DEAD)) {
        return i;
      }
    }
    return -1;
  }
}
