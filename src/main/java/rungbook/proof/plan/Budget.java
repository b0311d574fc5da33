package rungbook.proof.plan;

import rungbook.source.LimitSettings;

/**
 * How much work a proof may be. What needs more is not proved, and the report says which of these it broke. Each is
 * also a setting, see {@link LimitSettings}.
 *
 * @param positions combinations of the positions of the controls that a fault depends on, each of which may have blown
 * a fuse
 * @param faults of a system
 * @param arrivals pairs of a step and a state of the equipment in which it is reached
 * @param solutions states of the equipment that are read or looked at, times the healthy system and every fault
 */
public record Budget(int positions, int faults, int arrivals, int solutions) {

  /**
   * Ample for equipment of the trade: the starter systems have 20 positions and 60 faults, their trees at most 40
   * states. The largest proof within these takes minutes, and can be canceled.
   */
  public static final Budget USUAL = new Budget(4_096, 2_000, 100_000, 1_000_000);

  private static final Budget IN_FORCE = of(LimitSettings.ofThisRun());

  /** The limits that this run of the program was started with. */
  public static Budget inForce() {
    return IN_FORCE;
  }

  public static Budget of(LimitSettings settings) {
    return new Budget(settings.number("positions", USUAL.positions), settings.number("faults", USUAL.faults),
        settings.number("arrivals", USUAL.arrivals), settings.number("solutions", USUAL.solutions));
  }
}
