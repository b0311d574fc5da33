package rungbook.tree;

import java.util.Optional;

/** Where a way on leads. */
public sealed interface Target {

  /**
   * A step of this tree.
   *
   * @param step its index in {@link Tree#steps}
   */
  record ToStep(int step) implements Target {}

  /**
   * Another tree of the library, which starts with untouched equipment.
   *
   * @param tree the file's name without {@code .md}
   * @param step a step's id there; empty for its first step
   */
  record ToTree(String tree, Optional<String> step) implements Target {}

  /** A target that does not exist; it has a problem. */
  record Nowhere() implements Target {}
}
