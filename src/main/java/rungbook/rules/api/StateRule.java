package rungbook.rules.api;

import rungbook.rules.flow.PathFacts;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A rule about the state of the equipment on the paths to a step. Inspects reachable steps only. */
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

  /** Whether anything in the tree can violate the rule; false skips all steps. */
  protected boolean concerns(RuleContext context) {
    return true;
  }

  /** Whether a step can violate the rule; false skips computing its state. */
  protected abstract boolean concerns(Step step, RuleContext context);

  /** @param point the state before the step's first action */
  protected abstract void inspect(Step step, RuleContext context, PathFacts.ProgramPoint point, Problems out);
}
