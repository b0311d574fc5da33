package rungbook.action;

/** One change of the equipment's state. All names are lookup keys. */
public sealed interface StateChange {

  /** A control is set to a position. */
  record SetPosition(String control, String position) implements StateChange {}

  /** @param key what the condition begins to hold for: a thing, a terminal ({@code y at furnace}) or a place */
  record Begin(EquipmentCondition condition, String key) implements StateChange {}

  /** @param key what the condition no longer holds for: a thing, a terminal ({@code y at furnace}) or a place */
  record End(EquipmentCondition condition, String key) implements StateChange {}
}
