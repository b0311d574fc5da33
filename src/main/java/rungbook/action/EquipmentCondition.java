package rungbook.action;

import java.util.Set;

/** What an action can make true of the equipment, and what another can end. */
public enum EquipmentCondition {
  /** A panel is open. */
  OPEN,
  /** A switch or interlock is defeated. */
  BYPASSED(Trait.BEHIND_PANEL, Trait.CHANGES_READINGS),
  /** A power source is switched off. */
  ISOLATED(Trait.CHANGES_READINGS),
  /** What a power source feeds was told to start, while the source was off, and did not. */
  TRIED(Trait.NEEDS_SUCCESS),
  /** A power source has a tag that says why it is off. */
  TAGGED_OUT,
  /** A part, or a terminal at one place, is taken off. */
  DISCONNECTED(Trait.BEHIND_PANEL, Trait.CHANGES_READINGS),
  /** A fuse or breaker is exchanged for a new one, which is good until the circuit opens it again. */
  REPLACED(Trait.BEHIND_PANEL, Trait.CHANGES_READINGS),
  /** A switch that a button resets is reset, or exchanged for a new one: it is closed until it trips again. */
  RESET(Trait.CHANGES_READINGS),
  /** A part, or a thing outside the circuit, is replaced, or repaired in place: a fault in it is gone. */
  REPAIRED(Trait.CHANGES_READINGS),
  /** A capacitor is bled and proved flat. */
  DISCHARGED(Trait.BEHIND_PANEL, Trait.CHANGES_READINGS, Trait.NEEDS_SUCCESS),
  /** A place is proved dead. */
  PROVED_DEAD(Trait.BEHIND_PANEL, Trait.NEEDS_SUCCESS),
  /**
   * Something at a place was touched. From then on it is assumed to be dead, so a mistake is reported once, at the
   * first touch.
   */
  TOUCHED(Trait.BEHIND_PANEL),
  /** The meter is proved on a source known to be live. */
  METER_PROVED;

  private enum Trait { BEHIND_PANEL, CHANGES_READINGS, NEEDS_SUCCESS }

  @SuppressWarnings("ImmutableEnumChecker") // made by Set.of or List.of

  private final Set<Trait> traits;

  EquipmentCondition(Trait... traits) {
    this.traits = Set.of(traits);
  }

  /** Whether beginning or ending it takes hands or leads behind the panel. */
  public boolean isBehindPanel() {
    return traits.contains(Trait.BEHIND_PANEL);
  }

  /** Whether readings may change, so that earlier readings no longer hold. */
  public boolean changesReadings() {
    return traits.contains(Trait.CHANGES_READINGS);
  }

  /** Whether it does not hold after an answer that says the task failed: {@code not dead}. */
  public boolean needsSuccess() {
    return traits.contains(Trait.NEEDS_SUCCESS);
  }
}
