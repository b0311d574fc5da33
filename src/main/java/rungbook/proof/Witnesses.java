package rungbook.proof;

/** Each way shown is as long as the tree; so that a tree with a thousand problems costs no thousand ways, only the first get one. */
final class Witnesses {

  private static final int MOST = 100;

  private int shown;

  /** Whether one more is shown. */
  boolean next() {
    return shown++ < MOST;
  }
}
