package rungbook.rules.flow;

import java.util.function.IntPredicate;

/** From which steps some path leads on to a step of a kind. */
public final class Onward {

  private final FlowGraph graph;
  private final boolean[] leads;

  private Onward(FlowGraph graph) {
    this.graph = graph;
    this.leads = new boolean[graph.size()];
  }

  /**
   * @param goal the steps that are looked for
   * @param passes the steps that a path may pass on the way
   */
  public static Onward to(FlowGraph graph, IntPredicate goal, IntPredicate passes) {
    Onward onward = new Onward(graph);
    boolean changed = true;
    while (changed) {
      changed = onward.sweep(goal, passes);
    }
    return onward;
  }

  /** Whether some way of a step leads to a goal. */
  public boolean after(int step) {
    for (int way = graph.firstWay(step); way < graph.firstWay(step + 1); way++) {
      if (graph.to(way) >= 0 && leads[graph.to(way)]) {
        return true;
      }
    }
    return false;
  }

  private boolean sweep(IntPredicate goal, IntPredicate passes) {
    boolean changed = false;
    int[] order = graph.order();
    for (int i = order.length - 1; i >= 0; i--) {
      int step = order[i];
      if (!leads[step] && (goal.test(step) || (passes.test(step) && after(step)))) {
        leads[step] = true;
        changed = true;
      }
    }
    return changed && graph.isCircular();
  }
}
