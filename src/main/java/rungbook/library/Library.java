package rungbook.library;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.source.ProblemList;
import rungbook.tree.Shared;

/**
 * A compiled library.
 *
 * @param ofShared the problems of the shared texts, and of files that could not be read
 */
public record Library(LibraryText text, Shared shared, List<CompiledTree> trees, ProblemList ofShared) {

  public Library {
    trees = List.copyOf(trees);
  }

  /** All problems, each once. */
  public ProblemList found() {
    return join(ofShared, trees.stream().map(CompiledTree::found));
  }

  /** What was found in shared texts and in all trees, as one. */
  public static ProblemList join(ProblemList ofShared, Stream<ProblemList> ofTrees) {
    ProblemList all = ProblemList.join(Stream.concat(Stream.of(ofShared), ofTrees).toList());
    return all.idle().isEmpty() ? all : all.and(all.unused(quiet -> true));
  }

  public Optional<CompiledTree> tree(String id) {
    return trees.stream().filter(tree -> tree.tree().id().equals(id)).findFirst();
  }
}
