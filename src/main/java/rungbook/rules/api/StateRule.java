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
  public final void inspect(RuleContext subject, Problems out) {
    if (!concerns(subject)) {
      return;
    }
    PathFacts state = subject.state();
    PathFacts.Moment moment = state.moment();
    for (int number : state.order()) {
      Step step = state.step(number);
      if (concerns(step, subject)) {
        moment.enter(number);
        inspect(step, subject, moment, out);
      }
    }
  }

  /** Whether anything in the tree can break the rule; false saves looking at its steps. */
  protected boolean concerns(RuleContext subject) {
    return true;
  }

  /** Whether a step can break the rule; false saves working out its state. */
  protected abstract boolean concerns(Step step, RuleContext subject);

  /** @param moment the state before the step's first deed */
  protected abstract void inspect(Step step, RuleContext subject, PathFacts.Moment moment, Problems out);
}
