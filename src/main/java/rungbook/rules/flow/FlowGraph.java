package rungbook.rules.flow;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A graph prepared for dataflow: its reachable steps in reverse postorder, so that without cycles a step comes after
 * all its predecessors, and the incoming ways of each step. Ways are numbered, those of step 0 first.
 */
public final class FlowGraph {

  private static final int NONE = -1;

  private final Graph graph;
  private final int[] firstWay;
  private final int[] from;
  private final int[] order;
  private final boolean circular;
  private int @Nullable [] firstInto;
  private int @Nullable [] into;
  private int @Nullable [] shortest;

  private FlowGraph(Graph graph, int[] firstWay, int[] from, int[] order, boolean circular) {
    this.graph = graph;
    this.firstWay = firstWay;
    this.from = from;
    this.order = order;
    this.circular = circular;
  }

  public static FlowGraph of(Graph graph) {
    int size = graph.size();
    int[] firstWay = new int[size + 1];
    for (int step = 0; step < size; step++) {
      firstWay[step + 1] = firstWay[step] + graph.targets(step).length;
    }
    int[] from = new int[firstWay[size]];
    for (int step = 0; step < size; step++) {
      Arrays.fill(from, firstWay[step], firstWay[step + 1], step);
    }
    int[] order = reversePostorder(graph);
    return new FlowGraph(graph, firstWay, from, order, hasCircle(graph, order));
  }

  /** The reachable steps in reverse postorder, the first step first. */
  public int[] order() {
    return order;
  }

  public int size() {
    return graph.size();
  }

  public int ways() {
    return from.length;
  }

  /** The number of a step's first way; the others follow. */
  public int firstWay(int step) {
    return firstWay[step];
  }

  /** The step that a way leaves. */
  public int from(int way) {
    return from[way];
  }

  /** The step that a way leads to; negative if it leads to none. */
  public int to(int way) {
    return graph.targets(from[way])[way - firstWay[from[way]]];
  }

  boolean isCircular() {
    return circular;
  }

  /** Where a step's incoming ways start in {@link #into()}; they end where the next step's start. */
  int firstInto(int step) {
    if (firstInto == null) {
      sortByTarget();
    }
    return Objects.requireNonNull(firstInto)[step];
  }

  /** The incoming ways of all steps; call {@link #firstInto} first. */
  int[] into() {
    return Objects.requireNonNull(into);
  }

  /** The ways of a shortest path from the first step to a reachable one. */
  public int[] shortestTo(int step) {
    if (shortest == null) {
      shortest = breadthFirst();
    }
    int length = 0;
    for (int at = step; at != 0; at = from[shortest[at]]) {
      length++;
    }
    int[] path = new int[length];
    for (int at = step; at != 0; at = from[shortest[at]]) {
      path[--length] = shortest[at];
    }
    return path;
  }

  private void sortByTarget() {
    int[] first = new int[size() + 1];
    for (int step : order) {
      for (int target : graph.targets(step)) {
        if (target >= 0) {
          first[target + 1]++;
        }
      }
    }
    for (int step = 0; step < size(); step++) {
      first[step + 1] += first[step];
    }
    into = new int[first[size()]];
    int[] next = first.clone();
    for (int step : order) {
      int[] targets = graph.targets(step);
      for (int way = 0; way < targets.length; way++) {
        if (targets[way] >= 0) {
          into[next[targets[way]]++] = firstWay[step] + way;
        }
      }
    }
    firstInto = first;
  }

  /** For each reachable step but the first, the way by which a breadth-first search reaches it. */
  private int[] breadthFirst() {
    int[] by = new int[size()];
    Arrays.fill(by, NONE);
    int[] queue = new int[order.length];
    int tail = 1;
    for (int head = 0; head < tail; head++) {
      int[] targets = graph.targets(queue[head]);
      for (int way = 0; way < targets.length; way++) {
        if (targets[way] > 0 && by[targets[way]] == NONE) {
          by[targets[way]] = firstWay[queue[head]] + way;
          queue[tail++] = targets[way];
        }
      }
    }
    return by;
  }

  private static int[] reversePostorder(Graph graph) {
    int size = graph.size();
    int[] order = new int[size];
    int left = size;
    boolean[] seen = new boolean[size];
    int[] stack = new int[size];
    int[] nextWay = new int[size];
    int depth = 0;
    if (size > 0) {
      seen[0] = true;
      depth = 1;
    }
    while (depth > 0) {
      int step = stack[depth - 1];
      int[] targets = graph.targets(step);
      if (nextWay[step] == targets.length) {
        order[--left] = step;
        depth--;
      } else {
        int target = targets[nextWay[step]++];
        if (target >= 0 && !seen[target]) {
          seen[target] = true;
          stack[depth++] = target;
        }
      }
    }
    return Arrays.copyOfRange(order, left, size);
  }

  /** A way that leads backward in reverse postorder closes a cycle. */
  private static boolean hasCircle(Graph graph, int[] order) {
    int[] place = new int[graph.size()];
    for (int i = 0; i < order.length; i++) {
      place[order[i]] = i;
    }
    for (int step : order) {
      for (int target : graph.targets(step)) {
        if (target >= 0 && place[target] <= place[step]) {
          return true;
        }
      }
    }
    return false;
  }
}
