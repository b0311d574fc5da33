package rungbook.proof.plan;

import rungbook.circuit.network.CircuitState;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * The state of the equipment, and the place of the work, when a step is done.
 *
 * @param place the location's key where the work is done; the last one where a step names none
 */
public record Situation(CircuitState state, String place) {

  /** The situation in which a step is done after this one. */
  public Situation to(Step step) {
    return step.at().map(at -> new Situation(state, at.key())).orElse(this);
  }

  /** The same where everything was dropped out before. */
  Situation alone() {
    return new Situation(state.alone(), place);
  }

  /** The situation once a step's actions are done as they say, where everything was dropped out before. */
  public Situation after(Step step) {
    CircuitState changed = state;
    for (Action action : step.actions()) {
      changed = changed.after(action.changes());
    }
    return new Situation(changed, place);
  }
}
