package rungbook.proof.rules;

/**
 * Each way shown is as long as the tree; so that a tree with a thousand problems costs no thousand ways, only the first
 * get one.
 */
public final class WitnessBudget {

  private static final int MOST = 100;

  private int shown;

  /** Whether one more is shown. */
  public boolean next() {
    return shown++ < MOST;
  }
}
