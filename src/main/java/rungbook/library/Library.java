package rungbook.library;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungbook.rules.wording.WordList;
import rungbook.source.ProblemList;
import rungbook.tree.Shared;

/**
 * A compiled library.
 *
 * @param words to avoid in its texts
 * @param ofShared the problems of the shared texts, and of files that could not be read
 * @param read each shared text as it was read, by path; empty if that is not known
 */
public record Library(LibraryText text, Shared shared, WordList words, List<CompiledTree> trees, ProblemList ofShared,
    Map<String, SharedTexts.ReadText> read) {

  public Library {
    trees = List.copyOf(trees);
  }

  /** The same texts around other trees. */
  public Library with(LibraryText text, List<CompiledTree> trees) {
    return new Library(text, shared, words, trees, ofShared, read);
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

  /** The paths of the trees of which some chain of ways to other trees leads to one of these, and of these. */
  public Set<String> leadingTo(Set<String> paths) {
    Map<String, Set<String>> back = new HashMap<>();
    for (CompiledTree from : trees) {
      Circles.ledTo(from.tree())
          .forEach(to -> back.computeIfAbsent("trees/" + to + ".md", any -> new HashSet<>()).add(from.path()));
    }
    return TreeLinks.reached(paths, to -> back.getOrDefault(to, Set.of()));
  }
}
