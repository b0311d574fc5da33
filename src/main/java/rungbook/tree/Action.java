package rungbook.tree;

import java.util.List;
import rungbook.action.ActionKind;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;

/**
 * One thing done to one thing: {@code bypass: door switch}.
 *
 * @param key the thing's lookup key
 * @param changes what it does to the equipment, in order; none if the thing could not be read
 */
public record Action(ActionKind kind, NameRef thing, String key, List<StateChange> changes) {

  public Action {
    changes = List.copyOf(changes);
  }

  /** Whether it takes something off or puts it back, which for a terminal depends on the place. */
  public boolean isAboutConnecting() {
    return kind.begins(EquipmentCondition.DISCONNECTED) || kind.ends(EquipmentCondition.DISCONNECTED);
  }

  /** Whether hands go on a wire or a part, so that it has to be dead. */
  public boolean touches() {
    return kind.begins(EquipmentCondition.TOUCHED);
  }
}
