package rungbook.library;

import java.util.List;
import java.util.Optional;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.tree.Shared;

/**
 * A compiled library.
 *
 * @param sharedProblems what is wrong with the shared texts themselves, and what could not be read
 */
public record Library(LibraryText text, Shared shared, List<CompiledTree> trees, List<Problem> sharedProblems) {

  public Library {
    trees = List.copyOf(trees);
    sharedProblems = List.copyOf(sharedProblems);
  }

  /** Everything wrong anywhere, each problem once, in reading order. */
  public List<Problem> problems() {
    Problems all = new Problems();
    all.addAll(sharedProblems);
    trees.forEach(tree -> all.addAll(tree.problems()));
    return all.inReadingOrder();
  }

  public Optional<CompiledTree> tree(String id) {
    return trees.stream().filter(tree -> tree.tree().id().equals(id)).findFirst();
  }
}
