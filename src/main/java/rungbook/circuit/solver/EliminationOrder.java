package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The order in which the nodes of a network are eliminated, and the slot of each pair of nodes.
 *
 * <p>Computed once for a structure; every network and sample then runs the same steps. Node 0 is ground and is not
 * eliminated. The node of least degree comes next, which creates few new pairs in a network that is nearly a tree. A
 * node's neighbors when it is eliminated are all on its path to the root of the elimination tree, so a change at a node
 * changes nothing but that path.
 */
public final class EliminationOrder {

  private final int nodeCount;
  private final Map<Long, Integer> slots = new HashMap<>();
  private final List<List<Integer>> pairs = new ArrayList<>();
  private final int[] nodes;
  private final int[] turn;
  private final int[] parent;
  private final int[][] neighbors;
  private final int[][] slotTo;
  private final int[][] terms;
  private final int[][] givers;

  private EliminationOrder(int nodeCount, List<int[]> edges) {
    this.nodeCount = nodeCount;
    nodes = new int[nodeCount - 1];
    turn = new int[nodeCount];
    neighbors = new int[nodeCount][];
    slotTo = new int[nodeCount][];
    eliminate(adjacency(edges));
    parent = parents();
    terms = arrays(pairs);
    givers = arrays(givers());
  }

  private static int[][] arrays(List<List<Integer>> lists) {
    return lists.stream().map(list -> list.stream().mapToInt(Integer::intValue).toArray()).toArray(int[][]::new);
  }

  private List<List<Integer>> givers() {
    List<List<Integer>> of = new ArrayList<>();
    for (int i = 0; i < nodeCount; i++) {
      of.add(new ArrayList<>());
    }
    for (int node : nodes) {
      for (int i = 0; i < neighbors[node].length; i++) {
        of.get(neighbors[node][i]).addAll(List.of(node, slotTo[node][i]));
      }
    }
    return of;
  }

  private int[] parents() {
    int[] parents = new int[nodeCount];
    for (int node : nodes) {
      for (int other : neighbors[node]) {
        parents[node] = turn[other] < turn[parents[node]] ? other : parents[node];
      }
    }
    return parents;
  }

  /**
   * Computes the order.
   *
   * @param edges pairs of nodes that some state or fault may join; every node may be tied to ground
   */
  public static EliminationOrder of(int nodeCount, List<int[]> edges) {
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
    if (slots.putIfAbsent(pair(a, b), slots.size()) == null) {
      pairs.add(new ArrayList<>());
    }
  }

  private long pair(int a, int b) {
    return (long) Math.min(a, b) * nodeCount + Math.max(a, b);
  }

  private void eliminate(List<SortedSet<Integer>> adjacent) {
    var left = new BitSet();
    left.set(1, nodeCount);
    turn[0] = nodeCount - 1;
    for (int step = 0; step < nodes.length; step++) {
      int node = leastDegree(adjacent, left);
      nodes[step] = node;
      turn[node] = step;
      assignSlots(node, adjacent.get(node).stream().mapToInt(Integer::intValue).toArray(), adjacent);
      adjacent.get(node).forEach(other -> adjacent.get(other).remove(node));
      left.clear(node);
    }
  }

  private static int leastDegree(List<SortedSet<Integer>> adjacent, BitSet left) {
    int best = left.nextSetBit(0);
    for (int i = best; i >= 0; i = left.nextSetBit(i + 1)) {
      if (adjacent.get(i).size() < adjacent.get(best).size()) {
        best = i;
      }
    }
    return best;
  }

  private void assignSlots(int node, int[] others, List<SortedSet<Integer>> adjacent) {
    neighbors[node] = others;
    slotTo[node] = new int[others.length];
    for (int i = 0; i < others.length; i++) {
      slotTo[node][i] = slot(node, others[i]);
      for (int j = 0; j < i; j++) {
        connect(adjacent, others[i], others[j]);
        pairs.get(slot(others[i], others[j])).addAll(List.of(slotTo[node][j], slotTo[node][i]));
      }
    }
  }

  int nodeCount() {
    return nodeCount;
  }

  public int slotCount() {
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

  /** A node's index in {@link #nodes}; ground comes last. */
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

  /**
   * What elimination adds to a slot: pairs of slots, each pair from one node, in the order of elimination. The second
   * of a pair is never to ground, so nobody needs the share that goes there.
   */
  int[] terms(int slot) {
    return terms[slot];
  }

  /** The nodes that pass a part of their current on to a node, each with its slot, in the order of elimination. */
  int[] givers(int node) {
    return givers[node];
  }

  /** The neighbor of a node that is eliminated next; 0 at a root. */
  int parent(int node) {
    return parent[node];
  }

  /** These nodes and all on their paths to the root, in the opposite order of elimination. */
  public int[] backward(BitSet wanted) {
    var turns = new BitSet();
    for (int node = wanted.nextSetBit(1); node >= 0; node = wanted.nextSetBit(node + 1)) {
      for (int at = node; at != 0 && !turns.get(turn[at]); at = parent[at]) {
        turns.set(turn[at]);
      }
    }
    int[] backward = turns.stream().map(step -> nodes[step]).toArray();
    for (int i = 0; i < backward.length / 2; i++) {
      int swapped = backward[i];
      backward[i] = backward[backward.length - 1 - i];
      backward[backward.length - 1 - i] = swapped;
    }
    return backward;
  }
}
