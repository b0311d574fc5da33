package rungbook.rules;

import java.util.List;
import java.util.Optional;
import rungbook.rules.flow.Routes;
import rungbook.rules.flow.State;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * A tree as the rules see it, with what several rules ask of it worked out once.
 *
 * @param readings by step: which reading leads which way, for a check with a meter that can measure it
 * @param state what may and what must be so at every step
 */
public record Subject(Tree tree, Graph graph, List<Optional<Readings>> readings, State state) {

  public static Subject of(Tree tree) {
    List<Optional<Readings>> readings = tree.steps().stream().map(step -> readings(step, tree)).toList();
    Graph graph = Graph.of(tree);
    return new Subject(tree, graph, readings, State.of(tree, Routes.of(graph)));
  }

  private static Optional<Readings> readings(Step step, Tree tree) {
    return step instanceof Step.MeterCheck check ? tree.meter().scale(check.quantity()).map(scale -> Readings.of(check, scale)) : Optional.empty();
  }
}
