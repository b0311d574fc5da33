package rungbook.action;

import static rungbook.action.EquipmentCondition.BYPASSED;
import static rungbook.action.EquipmentCondition.DISCHARGED;
import static rungbook.action.EquipmentCondition.DISCONNECTED;
import static rungbook.action.EquipmentCondition.ISOLATED;
import static rungbook.action.EquipmentCondition.METER_PROVED;
import static rungbook.action.EquipmentCondition.PROVED_DEAD;
import static rungbook.action.EquipmentCondition.REPAIRED;
import static rungbook.action.EquipmentCondition.REPLACED;
import static rungbook.action.EquipmentCondition.TAGGED_OUT;
import static rungbook.action.EquipmentCondition.TOUCHED;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.system.Vocabulary.Role;

/**
 * The actions of a task or a repair, one row each: its object, its instruction in a pack, and the conditions that it
 * begins and ends.
 */
public enum ActionKind {
  SET(ActionObject.SETTING, "Set", begin()),
  OPEN(ActionObject.PANEL, "Open", begin(EquipmentCondition.OPEN)),
  CLOSE(ActionObject.PANEL, "Close", begin(), end(EquipmentCondition.OPEN)),
  BYPASS(ActionObject.INTERLOCK, "Defeat for this test only", begin(BYPASSED)),
  ISOLATE(ActionObject.POWER_SWITCH, "Shut off and lock", begin(ISOLATED)),
  TRY(ActionObject.POWER_SWITCH, "Call for it, see that nothing starts, then call off",
      begin(EquipmentCondition.TRIED)),
  PROVE_DEAD(ActionObject.POINT, "Prove dead", begin(PROVED_DEAD)),
  DISCHARGE(ActionObject.CAPACITOR, "Discharge, then prove it flat on DC volts", begin(DISCHARGED)),
  DISCONNECT(ActionObject.THING, "Disconnect and keep clear", begin(TOUCHED, DISCONNECTED)),
  RECONNECT(ActionObject.THING, "Reconnect where it was", begin(TOUCHED), end(DISCONNECTED)),
  REPLACE(ActionObject.REPAIRABLE, "Replace", begin(TOUCHED, REPLACED, EquipmentCondition.RESET, REPAIRED)),
  REPAIR(ActionObject.REPAIRABLE, "Repair in place", begin(TOUCHED, EquipmentCondition.RESET, REPAIRED)),
  RESET(ActionObject.RESETTABLE, "Press the reset button", begin(EquipmentCondition.RESET)),
  RESTORE(ActionObject.RESTORABLE, "Put back", begin(), end(BYPASSED, EquipmentCondition.OPEN, DISCONNECTED, ISOLATED)),
  TAG_OUT(ActionObject.POWER_SWITCH, "Leave off, locked and tagged", begin(ISOLATED, TAGGED_OUT)),
  KNOWN_SOURCE(ActionObject.FREE_TEXT, "Known live source", begin(METER_PROVED));

  private static final Map<String, ActionKind> BY_WORDS = Arrays.stream(values())
      .collect(Collectors.toUnmodifiableMap(ActionKind::words, kind -> kind));

  /** The instruction to restore a control that is not simply put back. */
  private static final Map<Role, String> RESTORING = Map.of(Role.ISOLATOR, "Remove the lock and turn on",
      Role.INTERLOCK, "Remove the bypass");

  private final String words = name().toLowerCase(Locale.ROOT).replace('_', ' ');
  private final ActionObject object;
  private final String instruction;
  @SuppressWarnings("ImmutableEnumChecker") // made by Set.of or List.of
  private final List<EquipmentCondition> begins;
  @SuppressWarnings("ImmutableEnumChecker") // made by Set.of or List.of
  private final List<EquipmentCondition> ends;
  private final boolean changesReadings;
  private final boolean needsSuccess;

  ActionKind(ActionObject object, String instruction, List<EquipmentCondition> begins) {
    this(object, instruction, begins, List.of());
  }

  ActionKind(ActionObject object, String instruction, List<EquipmentCondition> begins, List<EquipmentCondition> ends) {
    this.object = object;
    this.instruction = instruction;
    this.begins = begins;
    this.ends = ends;
    this.changesReadings = object == ActionObject.SETTING
        || begins.stream().anyMatch(EquipmentCondition::changesReadings)
        || ends.stream().anyMatch(EquipmentCondition::changesReadings);
    this.needsSuccess = begins.stream().anyMatch(EquipmentCondition::needsSuccess);
  }

  private static List<EquipmentCondition> begin(EquipmentCondition... conditions) {
    return List.of(conditions);
  }

  private static List<EquipmentCondition> end(EquipmentCondition... conditions) {
    return List.of(conditions);
  }

  public static Optional<ActionKind> named(String written) {
    return Optional.ofNullable(BY_WORDS.get(written.toLowerCase(Locale.ROOT)));
  }

  /** The first action in the table that begins a condition. */
  public static ActionKind beginning(EquipmentCondition condition) {
    return Arrays.stream(values()).filter(kind -> kind.begins(condition)).findFirst().orElseThrow();
  }

  /** As trees write it: {@code prove dead}. */
  public String words() {
    return words;
  }

  /** What it may be done to. */
  public ActionObject object() {
    return object;
  }

  /**
   * The instruction in a pack, without the object.
   *
   * @param role the role of the control that the action is done to
   */
  public String instruction(Optional<Role> role) {
    return this == RESTORE ? role.map(RESTORING::get).orElse(instruction) : instruction;
  }

  /** Whether readings may change, so that earlier readings no longer hold. */
  public boolean changesReadings() {
    return changesReadings;
  }

  /** Whether the action can fail and then change nothing: it does not count on a way on that says it failed. */
  public boolean needsSuccess() {
    return needsSuccess;
  }

  List<EquipmentCondition> begins() {
    return begins;
  }

  List<EquipmentCondition> ends() {
    return ends;
  }

  public boolean begins(EquipmentCondition condition) {
    return begins.contains(condition);
  }

  public boolean ends(EquipmentCondition condition) {
    return ends.contains(condition);
  }
}
