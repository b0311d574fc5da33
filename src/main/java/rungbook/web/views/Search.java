package rungbook.web.views;

import java.util.Comparator;
import java.util.List;
import rungbook.library.CompiledTree;
import rungbook.text.SearchEntry;
import rungbook.text.SearchWord;
import rungbook.tree.Step;

/** Finds trees by what the customer says. */
public final class Search {
  private Search() {}

  private record Hit(CompiledTree tree, int score) {}

  /** The trees that match, best first; all of them, by title, when the query is empty. */
  public static List<CompiledTree> find(List<CompiledTree> trees, String asked) {
    var words = SearchWord.of(asked);
    return trees.stream()
        .map(tree -> new Hit(tree, entry(tree).score(words)))
        .filter(hit -> words.isEmpty() || hit.score() > 0)
        .sorted(Comparator.comparingInt(Hit::score).reversed().thenComparing(hit -> hit.tree().tree().title()))
        .map(Hit::tree)
        .toList();
  }

  private static SearchEntry entry(CompiledTree compiled) {
    var tree = compiled.tree();
    return SearchEntry.of(tree.title(), tree.complaint(), tree.steps().stream().map(Step::title).toList());
  }
}
