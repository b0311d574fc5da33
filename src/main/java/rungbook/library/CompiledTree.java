package rungbook.library;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungbook.source.Problem;
import rungbook.source.ProblemList;
import rungbook.source.Severity;
import rungbook.source.Wording;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/**
 * A tree with all its problems.
 *
 * @param path its file's path in the library
 * @param found its problems, including those of its fragments
 * @param basis what holds until its text or something that it uses changes; empty if it could not be read
 */
public record CompiledTree(String path, Tree tree, ProblemList found, Optional<Basis> basis) {

  /**
   * What was found without a look at other trees.
   *
   * @param problems of the tree by itself
   * @param uses what it was read from beside its own text
   */
  record Basis(List<Problem> problems, Set<String> uses) {}

  /** The same tree with other problems. */
  CompiledTree with(ProblemList others) {
    return new CompiledTree(path, tree, others, basis);
  }

  /** What is shown, in reading order. */
  public List<Problem> problems() {
    return found.shown();
  }

  /** Whether the tree may be packed: it has no error and no way on without a target. */
  public boolean isSound() {
    return problems().stream().noneMatch(problem -> Wording.of(problem).severity() == Severity.ERROR)
        && tree.steps().stream().flatMap(step -> step.ways().stream())
            .noneMatch(way -> way.target() instanceof Target.Nowhere);
  }
}
