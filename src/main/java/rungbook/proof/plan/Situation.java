package rungbook.proof.plan;

import rungbook.circuit.network.CircuitState;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * How things stand when a step is done.
 *
 * @param place the location's key where the work is done; the last one where a step names none
 */
public record Situation(CircuitState state, String place) {

  /** Where a step is done by whoever comes from here. */
  public Situation to(Step step) {
    return step.at().map(at -> new Situation(state, at.key())).orElse(this);
  }

  /** How things stand once a task is done as it says; any other step changes nothing. */
  public Situation after(Step step) {
    if (!(step instanceof Step.Task task)) {
      return this;
    }
    CircuitState changed = state;
    for (Action action : task.actions()) {
      changed = changed.after(action.changes());
    }
    return new Situation(changed, place);
  }
}
