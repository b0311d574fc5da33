package rungbook.proof.propagation;

/** Where a way through a tree ends. */
public sealed interface End {

  /** An end at a step of the tree. */
  sealed interface AtStep extends End {
    /** Its index in the tree. */
    int step();
  }

  record Finding(int step) implements AtStep {}

  /** The tree says that the work ends, and has found nothing. */
  record Ended(int step) implements AtStep {}

  /**
   * Another tree takes over, as if the equipment were untouched.
   *
   * @param tree its id
   */
  record HandedOn(String tree) implements End {}

  /** No way on takes what is read or seen. */
  record Stuck(int step) implements AtStep {}
}
