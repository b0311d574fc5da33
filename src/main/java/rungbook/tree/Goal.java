package rungbook.tree;

import java.util.Optional;

/** Where a way on leads. */
public sealed interface Goal {

  /** A step of this tree. @param step its index in {@link Tree#steps} */
  record ToStep(int step) implements Goal {}

  /**
   * Another tree of the library, which starts as if nobody had touched the equipment.
   *
   * @param tree the file's name without {@code .md}
   * @param step a step's id there, else its first step
   */
  record ToTree(String tree, Optional<String> step) implements Goal {}

  /** Nothing that exists; a problem says so. */
  record Nowhere() implements Goal {}
}
