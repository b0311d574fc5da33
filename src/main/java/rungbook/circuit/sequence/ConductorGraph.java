package rungbook.circuit.sequence;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.Draw;

/**
 * The conductors of a network: wires, windings, sources, and every contact and fuse as if closed, but no loads and
 * capacitors. The branches that a current through an edge may pass are those of the edge's biconnected component
 * (Hopcroft and Tarjan 1973).
 */
final class ConductorGraph {

  /** Two nodes that conduct; the number is that of a branch, or −1. */
  private record Edge(int a, int b, int branch) {

    int other(int node) {
      return node == a ? b : a;
    }
  }

  /** Where the search is at a node: the edges it has yet to follow, and where its first edge is on the stack. */
  private static final class Visit {
    private final int node;
    private final Edge from;
    private final int onStack;
    private int next;

    Visit(int node, Edge from, int onStack) {
      this.node = node;
      this.from = from;
      this.onStack = onStack;
    }
  }

  private final int nodeCount;
  private final List<List<Edge>> adjacent;

  ConductorGraph(CircuitNetwork network) {
    nodeCount = network.nodeCount();
    var conductors = new ArrayList<Edge>();
    for (int i = 0; i < network.branches().size(); i++) {
      Branch branch = network.branches().get(i);
      boolean isConductor = branch.kind() != Branch.Kind.LOAD && branch.direct().apply(Draw.MIDDLE).magnitude() > 0;
      if (isConductor && branch.a() != branch.b()) {
        conductors.add(new Edge(branch.a(), branch.b(), i));
      }
    }
    network.cores().forEach(core -> conductors.add(new Edge(core.sa(), core.sb(), -1)));
    adjacent = adjacency(conductors);
  }

  /**
   * The branches on the simple paths between two nodes, by index.
   *
   * @param extras pairs of nodes that a fault joins
   */
  BitSet between(int a, int b, List<int[]> extras) {
    var found = new BitSet();
    if (a != b) {
      component(new Edge(a, b, -1), extras.isEmpty() ? adjacent : with(extras)).stream()
          .filter(edge -> edge.branch() >= 0).forEach(edge -> found.set(edge.branch()));
    }
    return found;
  }

  /** By node, the edges at it, with those of a fault. */
  private List<List<Edge>> with(List<int[]> extras) {
    var edges = new ArrayList<>(adjacent);
    for (int[] pair : extras) {
      if (pair[0] != pair[1]) {
        Edge extra = new Edge(pair[0], pair[1], -1);
        for (int node : pair) {
          List<Edge> here = new ArrayList<>(edges.get(node));
          here.add(extra);
          edges.set(node, here);
        }
      }
    }
    return edges;
  }

  private List<List<Edge>> adjacency(List<Edge> edges) {
    var adjacent = new ArrayList<List<Edge>>();
    for (int i = 0; i < nodeCount; i++) {
      adjacent.add(new ArrayList<>());
    }
    edges.forEach(edge -> {
      adjacent.get(edge.a()).add(edge);
      adjacent.get(edge.b()).add(edge);
    });
    return adjacent;
  }

  /** A depth-first search whose first edge is this one: its component is what is left on the stack at the end. */
  private List<Edge> component(Edge first, List<List<Edge>> adjacent) {
    int[] depth = new int[nodeCount];
    int[] low = new int[nodeCount];
    var stack = new ArrayList<Edge>(List.of(first));
    Deque<Visit> path = new ArrayDeque<>();
    depth[first.a()] = 1;
    low[first.a()] = 1;
    enter(new Visit(first.b(), first, 0), 2, depth, low, path);
    while (!path.isEmpty()) {
      Visit visit = path.peek();
      if (visit.next < adjacent.get(visit.node).size()) {
        follow(adjacent.get(visit.node).get(visit.next++), visit, depth, low, stack, path);
      } else {
        path.pop();
        leave(visit, path, depth, low, stack);
      }
    }
    return stack;
  }

  private static void enter(Visit visit, int atDepth, int[] depth, int[] low, Deque<Visit> path) {
    depth[visit.node] = atDepth;
    low[visit.node] = atDepth;
    path.push(visit);
  }

  @SuppressWarnings("ReferenceEquality") // two conductors may join the same nodes
  private static void follow(Edge edge, Visit visit, int[] depth, int[] low, List<Edge> stack, Deque<Visit> path) {
    int other = edge.other(visit.node);
    if (edge == visit.from) {
      return;
    }
    if (depth[other] == 0) {
      stack.add(edge);
      enter(new Visit(other, edge, stack.size() - 1), depth[visit.node] + 1, depth, low, path);
    } else if (depth[other] < depth[visit.node]) {
      stack.add(edge);
      low[visit.node] = Math.min(low[visit.node], depth[other]);
    }
  }

  private static void leave(Visit visit, Deque<Visit> path, int[] depth, int[] low, List<Edge> stack) {
    Visit above = path.peek();
    if (above == null) {
      return;
    }
    low[above.node] = Math.min(low[above.node], low[visit.node]);
    if (low[visit.node] >= depth[above.node]) {
      stack.subList(visit.onStack, stack.size()).clear();
    }
  }
}
