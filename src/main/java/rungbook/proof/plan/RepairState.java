package rungbook.proof.plan;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.system.remedy.Remedy;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * What was done since the finding that may take a fault away. All names are keys.
 *
 * @param repaired what was replaced or repaired
 * @param switchedOn the power switches that were restored
 */
public record RepairState(Set<String> repaired, Set<String> switchedOn) {

  public static final RepairState NOTHING_DONE = new RepairState(Set.of(), Set.of());

  public RepairState {
    repaired = Set.copyOf(repaired);
    switchedOn = Set.copyOf(switchedOn);
  }

  public RepairState after(Step step) {
    RepairState done = this;
    for (Action action : step.actions()) {
      done = done.after(action);
    }
    return done;
  }

  public RepairState after(Action action) {
    Set<String> more = new HashSet<>(repaired);
    Set<String> on = new HashSet<>(switchedOn);
    for (StateChange change : action.changes()) {
      if (change instanceof StateChange.Begin begin && begin.condition() == EquipmentCondition.REPAIRED) {
        more.add(begin.key());
      } else if (change instanceof StateChange.End end && end.condition() == EquipmentCondition.ISOLATED) {
        on.add(end.key());
      }
    }
    return new RepairState(more, on);
  }

  /** Whether something was done that is meant to take a fault away. */
  public boolean isRepair(Remedy remedy) {
    return !repaired.isEmpty() || remedy.foundOff().filter(switchedOn::contains).isPresent();
  }

  public boolean takesAway(Remedy remedy) {
    return remedy.isDoneBy(repaired, switchedOn);
  }

  /** Everything that was replaced, repaired or switched on. */
  public Set<String> renewed() {
    return Stream.concat(repaired.stream(), switchedOn.stream()).collect(Collectors.toUnmodifiableSet());
  }
}
