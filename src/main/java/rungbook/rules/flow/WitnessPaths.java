package rungbook.rules.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Turns the ways of a path into a witness. */
public final class WitnessPaths {

  /**
   * Stops on all paths shown for one tree. Past this, problems are reported without a path, to limit time and memory.
   */
  private static final int MOST_STOPS = 100_000;

  private final Tree tree;
  private final FlowGraph graph;
  private int left = MOST_STOPS;

  public WitnessPaths(Tree tree, FlowGraph graph) {
    this.tree = tree;
    this.graph = graph;
  }

  /** Whether the budget is spent; searching for further paths is then pointless. */
  public boolean isSpent() {
    return left <= 0;
  }

  /**
   * @param ways a path's ways from the first step, in order
   * @param last the step to which it leads
   * @param answer the answer that leads on from there; {@code ""} at the end of the path
   */
  public Optional<Witness> along(int[] ways, int last, String answer) {
    if (ways.length > left) {
      left = 0;
      return Optional.empty();
    }
    left -= ways.length + 1;
    List<Witness.Stop> stops = new ArrayList<>(ways.length + 1);
    for (int way : ways) {
      int step = graph.from(way);
      stops.add(stop(step, tree.steps().get(step).ways().get(way - graph.firstWay(step)).written()));
    }
    stops.add(stop(last, answer));
    return Optional.of(new Witness.Path(stops));
  }

  private Witness.Stop stop(int step, String answer) {
    Step passed = tree.steps().get(step);
    return new Witness.Stop(passed.title(), passed.source(), passed.header().titleSpan(), answer);
  }
}
