package rungbook.library;

import java.util.List;
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
 */
public record CompiledTree(String path, Tree tree, ProblemList found) {

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
