package rungbook.rules.flow;

/**
 * The kinds of facts about the equipment. Most are about a named object; the others are about the equipment as a whole.
 * Those from {@link #POWER_OFF} to {@link #DISCHARGED} end when a power source is switched on.
 */
public enum Fact {
  /** A finding that leads on has been passed. */
  FOUND,
  /** Something has been repaired, replaced or found off and switched on, since the last finding. */
  REPAIRED,
  /** A fault has been found, or something repaired, and nothing checked since. */
  UNCHECKED,
  /** Some power source has been switched off, and none switched on again since. */
  POWER_OFF,
  /** Something has been proved dead since power was last switched on. */
  PROVED_ANYWHERE,
  /** A capacitor has been discharged since power was last switched on. */
  DISCHARGED_ANY,
  /** Some power source has been tagged out, and none switched on again since. */
  TAGGED_OUT,
  /** Proved dead, by the location of the task. */
  PROVED_AT,
  /** A point proved dead, by its name and the location of the task. */
  PROVED_POINT,
  DISCHARGED,
  /** A power source is on, or was tried since it was switched off. */
  TRIED,
  /** Power was proved to be still on, by the location of the task. Only proving that place dead ends it. */
  STILL_LIVE,
  /** A fuse replaced, and no short looked for since. */
  FUSE_REPLACED,
  /** A control at a position. */
  AT,
  /** A task has set a control. */
  SET,
  ISOLATED,
  /** A power source switched off and not tagged. */
  OFF_UNTAGGED,
  BYPASSED,
  OPEN,
  DISCONNECTED,
  /** A finding has been passed, by the id of its step. */
  FOUND_AT,
  /** Nothing that a finding's faults are in has been repaired since the finding; by the id of its step. */
  FAULT_LEFT;

  static final Fact[] ALL = values();

  boolean isNameless() {
    return ordinal() <= TAGGED_OUT.ordinal();
  }
}
