package rungbook.web.views;

import java.util.Comparator;
import java.util.List;
import rungbook.library.CompiledTree;
import rungbook.text.SearchEntry;
import rungbook.tree.Step;

/** Finds trees by what the customer says. */
public final class Search {
  private Search() {}

  private record Hit(CompiledTree tree, int score) {}

  /** The trees that match at least half as well as the best, best first; all of them, by title, without a query. */
  public static List<CompiledTree> find(List<CompiledTree> trees, String asked) {
    var words = SearchEntry.asked(asked);
    var hits = trees.stream().map(tree -> new Hit(tree, entry(tree).score(words))).toList();
    var best = hits.stream().mapToInt(Hit::score).max().orElse(0);
    return hits.stream()
        .filter(hit -> words.isEmpty() || (hit.score() > 0 && hit.score() * 2 >= best))
        .sorted(Comparator.comparingInt(Hit::score).reversed().thenComparing(hit -> hit.tree().tree().title()))
        .map(Hit::tree)
        .toList();
  }

  private static SearchEntry entry(CompiledTree compiled) {
    var tree = compiled.tree();
    return SearchEntry.of(tree.title(), tree.complaint(), tree.steps().stream().map(Step::title).toList());
  }
}
