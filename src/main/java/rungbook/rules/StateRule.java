package rungbook.rules;

import rungbook.rules.flow.State;
import rungbook.source.Problems;
import rungbook.tree.Step;

/** A rule about the state in which the paths of a tree find the equipment at a step. Only steps that a path reaches are inspected. */
public abstract class StateRule implements Rule {

  @Override
  public final void inspect(Subject subject, Problems out) {
    if (!concerns(subject)) {
      return;
    }
    State state = subject.state();
    State.Moment moment = state.moment();
    for (int number : state.order()) {
      Step step = state.step(number);
      if (concerns(step, subject)) {
        moment.enter(number);
        inspect(step, subject, moment, out);
      }
    }
  }

  /** Whether anything in the tree can break the rule; false saves looking at its steps. */
  protected boolean concerns(Subject subject) {
    return true;
  }

  /** Whether a step can break the rule; false saves working out its state. */
  protected abstract boolean concerns(Step step, Subject subject);

  /** @param moment the state before the step's first deed */
  protected abstract void inspect(Step step, Subject subject, State.Moment moment, Problems out);
}
