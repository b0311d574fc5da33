package rungbook.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.system.Vocabulary;

/** Compiles the actions of one step into changes of the equipment's state. */
public final class ActionCompiler {

  private final Optional<Vocabulary> system;
  private final String place;

  /** @param place the key of the step's location; {@code ""} if it names none */
  public ActionCompiler(Optional<Vocabulary> system, String place) {
    this.system = system;
    this.place = place;
  }

  /** @param key the lookup key of the action's object; a control and its position make a SetPosition instead */
  public List<StateChange> compile(ActionKind kind, String key) {
    List<StateChange> changes = new ArrayList<>(kind.begins().size() + kind.ends().size());
    for (EquipmentCondition begun : kind.begins()) {
      if (begun == EquipmentCondition.RESET) {
        ObjectNames.resetWith(system, key).stream().sorted()
            .forEach(part -> changes.add(new StateChange.Begin(begun, part)));
      } else if (begins(begun, key)) {
        changes.add(new StateChange.Begin(begun, subject(begun, key)));
      }
      if (begun == EquipmentCondition.TOUCHED && ObjectNames.holdsCharge(system, key)) {
        changes.add(new StateChange.Begin(EquipmentCondition.DISCHARGED, key));
      }
    }
    for (EquipmentCondition ended : kind.ends()) {
      changes.add(new StateChange.End(ended, subject(ended, key)));
    }
    return List.copyOf(changes);
  }

  /** What is outside the circuit has no conductor that hands could touch. */
  private boolean begins(EquipmentCondition begun, String key) {
    return switch (begun) {
      case REPLACED -> opensByItself(key);
      case TOUCHED -> system.filter(known -> known.isOutside(key)).isEmpty();
      default -> true;
    };
  }

  private boolean opensByItself(String key) {
    return ObjectNames.isPart(system, key, "fuse") || ObjectNames.isPart(system, key, "breaker");
  }

  private String subject(EquipmentCondition condition, String key) {
    return switch (condition) {
      case PROVED_DEAD, TOUCHED -> place;
      case DISCONNECTED -> ObjectNames.loose(system, key, place);
      case OPEN, BYPASSED, ISOLATED, TRIED, TAGGED_OUT, REPLACED, RESET, REPAIRED, DISCHARGED, METER_PROVED -> key;
    };
  }
}
