package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * The order in which the nodes of a network are eliminated, and where each admittance is kept.
 *
 * <p>Worked out once for a structure; every state and sample then runs the same steps. Node 0 is ground
 * and stays. A node of least degree goes first, which keeps a network that is nearly a tree nearly a tree.
 */
final class EliminationOrder {

  private final int nodeCount;
  private final Map<Long, Integer> slots = new HashMap<>();
  private final int[] order;
  private final int[] turn;
  private final int[][] neighbours;
  private final int[][] slotTo;
  private final int[][] between;

  private EliminationOrder(int nodeCount, List<int[]> edges) {
    this.nodeCount = nodeCount;
    order = new int[nodeCount - 1];
    turn = new int[nodeCount];
    neighbours = new int[nodeCount][];
    slotTo = new int[nodeCount][];
    between = new int[nodeCount][];
    eliminate(adjacency(edges));
  }

  /** @param edges pairs of nodes that some state may join; every node may be tied to ground */
  static EliminationOrder of(int nodeCount, List<int[]> edges) {
    return new EliminationOrder(nodeCount, edges);
  }

  private List<TreeSet<Integer>> adjacency(List<int[]> edges) {
    List<TreeSet<Integer>> beside = new ArrayList<>();
    for (int i = 0; i < nodeCount; i++) {
      beside.add(new TreeSet<>());
    }
    for (int i = 1; i < nodeCount; i++) {
      connect(beside, 0, i);
    }
    edges.stream().filter(e -> e[0] != e[1]).forEach(e -> connect(beside, e[0], e[1]));
    return beside;
  }

  private void connect(List<TreeSet<Integer>> beside, int a, int b) {
    beside.get(a).add(b);
    beside.get(b).add(a);
    slots.putIfAbsent(pair(a, b), slots.size());
  }

  private static long pair(int a, int b) {
    return (long) Math.min(a, b) << 32 | Math.max(a, b);
  }

  private void eliminate(List<TreeSet<Integer>> beside) {
    turn[0] = nodeCount - 1;
    for (int step = 0; step < order.length; step++) {
      int node = leastDegree(beside);
      order[step] = node;
      turn[node] = step;
      note(node, beside.get(node).stream().mapToInt(Integer::intValue).toArray(), beside);
      beside.get(node).forEach(other -> beside.get(other).remove(node));
      beside.set(node, null);
    }
  }

  private static int leastDegree(List<TreeSet<Integer>> beside) {
    int best = -1;
    for (int i = 1; i < beside.size(); i++) {
      if (beside.get(i) != null && (best < 0 || beside.get(i).size() < beside.get(best).size())) {
        best = i;
      }
    }
    return best;
  }

  private void note(int node, int[] others, List<TreeSet<Integer>> beside) {
    neighbours[node] = others;
    slotTo[node] = new int[others.length];
    between[node] = new int[others.length * others.length];
    for (int i = 0; i < others.length; i++) {
      slotTo[node][i] = slots.get(pair(node, others[i]));
      for (int j = i + 1; j < others.length; j++) {
        connect(beside, others[i], others[j]);
        between[node][i * others.length + j] = slots.get(pair(others[i], others[j]));
      }
    }
  }

  int nodeCount() {
    return nodeCount;
  }

  int slotCount() {
    return slots.size();
  }

  /** Where the admittance between two different nodes is kept. */
  int slot(int a, int b) {
    return slots.get(pair(a, b));
  }

  /** The nodes but ground, first eliminated first. */
  int[] order() {
    return order;
  }

  /** When a node's turn comes. */
  int turn(int node) {
    return turn[node];
  }

  /** What a node is tied to when its turn comes, ground included. */
  int[] neighbours(int node) {
    return neighbours[node];
  }

  int[] slotsTo(int node) {
    return slotTo[node];
  }

  /** The slot between neighbours i and j > i of a node. */
  int between(int node, int i, int j) {
    return between[node][i * neighbours[node].length + j];
  }
}
