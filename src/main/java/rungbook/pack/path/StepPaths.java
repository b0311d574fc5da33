package rungbook.pack.path;

import java.util.function.IntPredicate;
import rungbook.proof.HighestVoltages;
import rungbook.rules.flow.FlowGraph;
import rungbook.rules.flow.Graph;
import rungbook.rules.flow.PathFacts;
import rungbook.tree.Tree;

/** All that is known of the paths to each step of a tree, computed once. */
public record StepPaths(StepStates states, NewCautions cautions, DialSettings dial, LiveLeads leads, StepsAhead ahead) {

  /** @param isPage whether a step is a page of its own */
  public static StepPaths of(Tree tree, HighestVoltages voltages, IntPredicate isPage) {
    FlowGraph graph = FlowGraph.of(Graph.of(tree));
    return new StepPaths(new StepStates(tree, PathFacts.of(tree, graph)), new NewCautions(tree, graph),
        new DialSettings(tree, graph), new LiveLeads(tree, voltages), new StepsAhead(tree, graph, isPage));
  }
}
