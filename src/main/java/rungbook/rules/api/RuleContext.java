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
 * A tree as the rules see it, with what several rules ask of it worked out once.
 *
 * @param readings by step: which reading leads which way, for a check with a meter that can measure it
 * @param state what may and what must be so at every step
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
