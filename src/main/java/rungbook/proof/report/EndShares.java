package rungbook.proof.report;

/**
 * Where a case ends, as shares of its installations.
 *
 * @param found at a finding that names it
 * @param mistaken at a finding that names only others
 */
public record EndShares(double found, double mistaken, double healthy, double referred, double handedOn,
    double nothing) {

  /** Smaller differences are the choice of the installations. */
  private static final double NOTED = 0.05;

  public static final EndShares NONE = new EndShares(0, 0, 0, 0, 0, 0);

  public EndShares plus(EndShares other) {
    return new EndShares(found + other.found, mistaken + other.mistaken, healthy + other.healthy,
        referred + other.referred, handedOn + other.handedOn, nothing + other.nothing);
  }

  /** As parts of another whole. */
  public EndShares over(double whole) {
    return new EndShares(found / whole, mistaken / whole, healthy / whole, referred / whole, handedOn / whole,
        nothing / whole);
  }

  /** Whether it ends elsewhere than another. */
  public boolean differs(EndShares other) {
    return differs(found, other.found) || differs(mistaken, other.mistaken) || differs(healthy, other.healthy)
        || differs(referred, other.referred) || differs(handedOn, other.handedOn) || differs(nothing, other.nothing);
  }

  /** Whether less is found, or more mistaken, called healthy or left without an answer, than of another. */
  public boolean isWorse(EndShares other) {
    return found < other.found - NOTED || mistaken > other.mistaken + NOTED || healthy > other.healthy + NOTED
        || nothing > other.nothing + NOTED;
  }

  private static boolean differs(double one, double other) {
    return Math.abs(one - other) > NOTED;
  }
}
