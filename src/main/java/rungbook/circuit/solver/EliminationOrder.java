package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The order in which the nodes of a network are eliminated, and the slot of each admittance.
 *
 * <p>Computed once for a structure; every state and sample then runs the same steps. Node 0 is ground and is not
 * eliminated. The node of least degree comes next, which creates few new pairs in a network that is nearly a tree.
 */
final class EliminationOrder {

  private final int nodeCount;
  private final Map<Long, Integer> slots = new HashMap<>();
  private final int[] nodes;
  private final int[] turn;
  private final int[][] neighbors;
  private final int[][] slotTo;
  private final int[][] between;
  private final boolean[] eliminated;

  private EliminationOrder(int nodeCount, List<int[]> edges) {
    this.nodeCount = nodeCount;
    nodes = new int[nodeCount - 1];
    turn = new int[nodeCount];
    neighbors = new int[nodeCount][];
    slotTo = new int[nodeCount][];
    between = new int[nodeCount][];
    eliminated = new boolean[nodeCount];
    eliminate(adjacency(edges));
  }

  /**
   * Computes the order.
   *
   * @param edges pairs of nodes that some state may join; every node may be tied to ground
   */
  static EliminationOrder of(int nodeCount, List<int[]> edges) {
    return new EliminationOrder(nodeCount, edges);
  }

  private List<SortedSet<Integer>> adjacency(List<int[]> edges) {
    List<SortedSet<Integer>> adjacent = new ArrayList<>();
    for (int i = 0; i < nodeCount; i++) {
      adjacent.add(new TreeSet<>());
    }
    for (int i = 1; i < nodeCount; i++) {
      connect(adjacent, 0, i);
    }
    edges.stream().filter(e -> e[0] != e[1]).forEach(e -> connect(adjacent, e[0], e[1]));
    return adjacent;
  }

  private void connect(List<SortedSet<Integer>> adjacent, int a, int b) {
    adjacent.get(a).add(b);
    adjacent.get(b).add(a);
    slots.putIfAbsent(pair(a, b), slots.size());
  }

  private static long pair(int a, int b) {
    return (long) Math.min(a, b) << 32 | Math.max(a, b);
  }

  private void eliminate(List<SortedSet<Integer>> adjacent) {
    turn[0] = nodeCount - 1;
    for (int step = 0; step < nodes.length; step++) {
      int node = leastDegree(adjacent);
      nodes[step] = node;
      turn[node] = step;
      assignSlots(node, adjacent.get(node).stream().mapToInt(Integer::intValue).toArray(), adjacent);
      adjacent.get(node).forEach(other -> adjacent.get(other).remove(node));
      eliminated[node] = true;
    }
  }

  private int leastDegree(List<SortedSet<Integer>> adjacent) {
    int best = -1;
    for (int i = 1; i < adjacent.size(); i++) {
      if (!eliminated[i] && (best < 0 || adjacent.get(i).size() < adjacent.get(best).size())) {
        best = i;
      }
    }
    return best;
  }

  private void assignSlots(int node, int[] others, List<SortedSet<Integer>> adjacent) {
    neighbors[node] = others;
    slotTo[node] = new int[others.length];
    between[node] = new int[others.length * others.length];
    for (int i = 0; i < others.length; i++) {
      slotTo[node][i] = slot(node, others[i]);
      for (int j = i + 1; j < others.length; j++) {
        connect(adjacent, others[i], others[j]);
        between[node][i * others.length + j] = slot(others[i], others[j]);
      }
    }
  }

  int nodeCount() {
    return nodeCount;
  }

  int slotCount() {
    return slots.size();
  }

  /** The slot of the admittance between two different nodes. */
  int slot(int a, int b) {
    return Objects.requireNonNull(slots.get(pair(a, b)), "no slot between these nodes");
  }

  /** All nodes except ground, in the order of elimination. */
  int[] nodes() {
    return nodes;
  }

  /** A node's index in {@link #nodes}. */
  int turn(int node) {
    return turn[node];
  }

  /** The neighbors of a node when it is eliminated, ground included. */
  int[] neighbors(int node) {
    return neighbors[node];
  }

  /** The slots between a node and each of its {@link #neighbors}. */
  int[] slotsTo(int node) {
    return slotTo[node];
  }

  /** The slot between neighbors i and j > i of a node. */
  int between(int node, int i, int j) {
    return between[node][i * neighbors[node].length + j];
  }
}
