package rungbook.rules.api;

import rungbook.rules.flow.PathFacts;
import rungbook.source.Problems;
import rungbook.tree.Step;

/**
 * A rule about the state in which the paths of a tree find the equipment at a step. Only steps that a path reaches are
 * inspected.
 */
public abstract class StateRule implements Rule {

  @Override
  public final void inspect(RuleContext context, Problems out) {
    if (!concerns(context)) {
      return;
    }
    PathFacts state = context.state();
    PathFacts.ProgramPoint point = state.point();
    for (int number : state.order()) {
      Step step = state.step(number);
      if (concerns(step, context)) {
        point.enter(number);
        inspect(step, context, point, out);
      }
    }
  }

  /** Whether anything in the tree can break the rule; false saves looking at its steps. */
  protected boolean concerns(RuleContext context) {
    return true;
  }

  /** Whether a step can break the rule; false saves working out its state. */
  protected abstract boolean concerns(Step step, RuleContext context);

  /** @param point the state before the step's first deed */
  protected abstract void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out);
}
