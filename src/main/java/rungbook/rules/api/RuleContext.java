package rungbook.rules.api;

import java.util.List;
import java.util.Optional;
import rungbook.rules.flow.FlowGraph;
import rungbook.rules.flow.Graph;
import rungbook.rules.flow.PathFacts;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * A tree with the analyses that several rules use, each computed once.
 *
 * @param readings by step: the readings of a meter check; empty for other steps, and if the meter has no scale for the
 * quantity
 * @param state what may hold and what must hold at every step
 */
public record RuleContext(Tree tree, Graph graph, List<Optional<Readings>> readings, PathFacts state) {

  public static RuleContext of(Tree tree) {
    List<Optional<Readings>> readings = tree.steps().stream().map(step -> readings(step, tree)).toList();
    Graph graph = Graph.of(tree);
    return new RuleContext(tree, graph, readings, PathFacts.of(tree, FlowGraph.of(graph)));
  }

  private static Optional<Readings> readings(Step step, Tree tree) {
    return step instanceof Step.MeterCheck check
        ? tree.meter().scale(check.quantity()).map(scale -> Readings.of(check, scale)) : Optional.empty();
  }
}
