package rungbook.rules.paths;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.tree.Action;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * How a path has left the equipment, as far as it can change a reading. It does not end where one tree leads to the
 * next.
 *
 * @param positions of the controls that are not at their first position, by the control's key
 * @param changed what is switched off, bypassed, taken off or open
 * @param hash of both, computed once
 */
record Equipment(Map<String, String> positions, Set<StateChange.Begin> changed, int hash) {

  private static final Set<EquipmentCondition> FOLLOWED = EnumSet.of(EquipmentCondition.ISOLATED,
      EquipmentCondition.BYPASSED, EquipmentCondition.DISCONNECTED, EquipmentCondition.OPEN);

  Equipment(Map<String, String> positions, Set<StateChange.Begin> changed) {
    this(Map.copyOf(positions), Set.copyOf(changed), positions.hashCode() * 31 + changed.hashCode());
  }

  static final Equipment UNTOUCHED = new Equipment(Map.of(), Set.of());

  /** After all actions of a step. */
  Equipment after(Step step, Tree tree) {
    if (step.actions().isEmpty()) {
      return this;
    }
    Map<String, String> set = new HashMap<>(positions);
    Set<StateChange.Begin> now = new HashSet<>(changed);
    for (Action action : step.actions()) {
      action.changes().forEach(change -> apply(change, tree, set, now));
    }
    return new Equipment(set, now);
  }

  private static void apply(StateChange change, Tree tree, Map<String, String> set, Set<StateChange.Begin> now) {
    if (change instanceof StateChange.SetPosition position) {
      if (isFirst(position, tree)) {
        set.remove(position.control());
      } else {
        set.put(position.control(), position.position());
      }
    } else if (change instanceof StateChange.Begin begin) {
      if (canChangeReadings(begin, tree.circuit())) {
        now.add(begin);
      }
    } else if (change instanceof StateChange.End end) {
      now.remove(new StateChange.Begin(end.condition(), end.key()));
    }
  }

  private static boolean isFirst(StateChange.SetPosition set, Tree tree) {
    return tree.system().flatMap(system -> Optional.ofNullable(system.controls().get(set.control())))
        .flatMap(control -> control.positions().stream().findFirst()).map(Names::key)
        .filter(set.position()::equals).isPresent();
  }

  /** An open panel changes a reading only if it opens a switch. */
  private static boolean canChangeReadings(StateChange.Begin begin, Optional<ControlSystem> circuit) {
    boolean isHarmless = begin.condition() == EquipmentCondition.OPEN && circuit.isPresent()
        && circuit.get().parts(Part.Switch.class)
            .noneMatch(part -> part.opensWith().map(Names::key).filter(begin.key()::equals).isPresent());
    return FOLLOWED.contains(begin.condition()) && !isHarmless;
  }

  @Override
  public boolean equals(Object other) {
    return other == this || (other instanceof Equipment same && hash == same.hash && positions.equals(same.positions)
        && changed.equals(same.changed));
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
