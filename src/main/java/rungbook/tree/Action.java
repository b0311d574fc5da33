package rungbook.tree;

import java.util.List;
import rungbook.action.ActionKind;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;

/**
 * One action on one object: {@code bypass: door switch}.
 *
 * @param key the thing's lookup key
 * @param changes its changes of state, in order; empty if the object could not be read
 */
public record Action(ActionKind kind, NameRef thing, String key, List<StateChange> changes) {

  public Action {
    changes = List.copyOf(changes);
  }

  /** Whether it disconnects or reconnects something; for a terminal this depends on the place. */
  public boolean isAboutConnecting() {
    return kind.begins(EquipmentCondition.DISCONNECTED) || kind.ends(EquipmentCondition.DISCONNECTED);
  }

  /** Whether a wire or a part is touched, so it must be dead. What is outside the circuit is neither. */
  public boolean touches() {
    return kind.begins(EquipmentCondition.TOUCHED)
        && (changes.isEmpty() || changes.stream().anyMatch(Action::isTouch));
  }

  private static boolean isTouch(StateChange change) {
    return change instanceof StateChange.Begin begin && begin.condition() == EquipmentCondition.TOUCHED;
  }
}
