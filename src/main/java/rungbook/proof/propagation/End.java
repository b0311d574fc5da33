package rungbook.proof.propagation;

/** Where a way through a tree ends. */
public sealed interface End {

  /** @param step its index in the tree */
  record Finding(int step) implements End {}

  /**
   * Another tree takes over, as if the equipment were untouched.
   *
   * @param tree its id
   */
  record HandedOn(String tree) implements End {}

  /**
   * No way on takes what is read or seen.
   *
   * @param step where it stops
   */
  record Stuck(int step) implements End {}
}
