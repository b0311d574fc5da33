package rungbook.web;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import rungbook.library.CompiledTree;
import rungbook.tree.Step;

/**
 * Finds trees by what the customer says. Every word asked for has to begin a word of the tree, or be another ending of
 * one; a word in the complaint or the title counts more than one in a step.
 */
final class Search {
  private static final int IN_COMPLAINT_OR_TITLE = 4;
  private static final int IN_A_STEP = 1;

  private Search() {
  }

  private record Hit(CompiledTree tree, int score) {}

  /** The trees that match, best first; all of them, by title, when nothing is asked for. */
  static List<CompiledTree> find(List<CompiledTree> trees, String asked) {
    var words = SearchWord.of(asked);
    return trees.stream()
        .map(tree -> new Hit(tree, score(tree, words)))
        .filter(hit -> words.isEmpty() || hit.score() > 0)
        .sorted(Comparator.comparingInt(Hit::score).reversed().thenComparing(hit -> hit.tree().tree().title()))
        .map(Hit::tree)
        .toList();
  }

  private static int score(CompiledTree compiled, List<SearchWord> asked) {
    var tree = compiled.tree();
    var said = SearchWord.of(tree.title() + " " + tree.complaint());
    var steps = SearchWord.of(tree.steps().stream().map(Step::title).collect(Collectors.joining(" ")));
    var total = 0;
    for (var word : asked) {
      var score = word.isIn(said) ? IN_COMPLAINT_OR_TITLE
          : word.isIn(steps) ? IN_A_STEP : 0;
      if (score == 0) {
        return 0;
      }
      total += score;
    }
    return total;
  }
}
