package rungbook.rules.flow;

/**
 * The kinds of facts about the equipment. Most are about a named object; the others are about the equipment as a whole.
 * Those up to {@link #DISCHARGED} end when a power source is switched on.
 */
public enum Fact {
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
  DISCHARGED,
  /** A fuse replaced, and no short looked for since. */
  FUSE_REPLACED,
  /** A control at a position. */
  AT,
  ISOLATED,
  /** A power source switched off and not tagged. */
  OFF_UNTAGGED,
  BYPASSED,
  OPEN,
  DISCONNECTED;

  static final Fact[] ALL = values();

  boolean isNameless() {
    return ordinal() <= TAGGED_OUT.ordinal();
  }
}
