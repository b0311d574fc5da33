package rungbook.pack.path;

import java.util.Arrays;
import java.util.function.IntPredicate;
import rungbook.rules.flow.FlowGraph;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** How many steps are still to be done until a finding, an end or another tree. */
public final class StepsAhead {

  private static final int UNKNOWN = -1;

  private final Tree tree;
  private final FlowGraph graph;
  private final IntPredicate counts;
  private final int[] least;
  private final int[] most;
  private boolean circular;

  /** @param counts whether a step is a page of its own */
  public StepsAhead(Tree tree, FlowGraph graph, IntPredicate counts) {
    this.tree = tree;
    this.graph = graph;
    this.counts = counts;
    this.least = new int[graph.size()];
    this.most = new int[graph.size()];
    Arrays.fill(least, UNKNOWN);
    int[] order = graph.order();
    for (int i = order.length - 1; i >= 0; i--) {
      count(order[i]);
    }
  }

  /** In reverse postorder backward every target is counted before, except around a circle. */
  private void count(int step) {
    int fewest = 0;
    int longest = 0;
    boolean first = true;
    for (int way = graph.firstWay(step); way < graph.firstWay(step + 1); way++) {
      int to = graph.to(way);
      int few = to < 0 || isResult(to) ? 1 : ahead(to, least);
      int many = to < 0 || isResult(to) ? 1 : ahead(to, most);
      fewest = first ? few : Math.min(fewest, few);
      longest = Math.max(longest, many);
      first = false;
    }
    least[step] = fewest;
    most[step] = longest;
  }

  private int ahead(int to, int[] counted) {
    circular |= least[to] == UNKNOWN;
    return Math.max(0, counted[to]) + (counts.test(to) ? 1 : 0);
  }

  private boolean isResult(int step) {
    return tree.steps().get(step) instanceof Step.Finding || tree.steps().get(step) instanceof Step.End;
  }

  /** {@code 3}, {@code 2 to 6}, or {@code 2 or more} where a path can go around in a circle. */
  public String words(int step) {
    int few = Math.max(0, least[step]);
    return circular ? few + " or more" : few == most[step] ? String.valueOf(few) : few + " to " + most[step];
  }
}
