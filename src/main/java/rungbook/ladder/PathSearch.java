package rungbook.ladder;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import rungbook.ladder.CircuitGraph.Limb;

/** Looks for the shortest way from a node that is drawn to another one, through limbs that are not drawn yet. */
final class PathSearch {

  private final CircuitGraph graph;
  private final Map<Integer, List<Limb>> atNode;
  private final Set<Limb> left;
  private final Map<Integer, Integer> drawn;
  private final int rightRail;
  private final Map<Integer, Limb> cameBy = new HashMap<>();
  private final List<Integer> reached = new ArrayList<>();

  /**
   * @param left the limbs that are not drawn yet
   * @param drawn the nodes that are
   */
  PathSearch(CircuitGraph graph, Map<Integer, List<Limb>> atNode, Set<Limb> left, Map<Integer, Integer> drawn,
      int rightRail) {
    this.graph = graph;
    this.atNode = atNode;
    this.left = left;
    this.drawn = drawn;
    this.rightRail = rightRail;
  }

  /** The limbs from a node on, the first one given. */
  List<Limb> from(int start, Limb first) {
    int second = first.other(start);
    cameBy.put(second, first);
    reached.add(second);
    Deque<Integer> queue = new ArrayDeque<>(List.of(second));
    while (!queue.isEmpty()) {
      int node = queue.poll();
      if (!isEnd(node)) {
        atNode.getOrDefault(node, List.of()).stream().filter(limb -> left.contains(limb) && !limb.equals(first))
            .forEach(limb -> step(node, limb, queue));
      }
    }
    return back(first, end(start));
  }

  private void step(int node, Limb limb, Deque<Integer> queue) {
    int next = limb.other(node);
    if (cameBy.putIfAbsent(next, limb) == null) {
      reached.add(next);
      queue.add(next);
    }
  }

  private boolean isEnd(int node) {
    return drawn.containsKey(node) || graph.isGround(node);
  }

  /** The right rail, or else another drawn node or ground, whichever is nearer, or else the farthest dead end. */
  private int end(int start) {
    Optional<Integer> rail = reached.stream().filter(node -> node == rightRail && node != start).findFirst();
    return rail.or(() -> reached.stream().filter(node -> isEnd(node) && node != start).findFirst())
        .or(() -> reached.stream().filter(node -> node == start).findFirst())
        .orElseGet(() -> reached.get(reached.size() - 1));
  }

  private List<Limb> back(Limb first, int end) {
    var path = new ArrayList<Limb>();
    int node = end;
    Limb limb = Objects.requireNonNull(cameBy.get(node));
    while (!limb.equals(first)) {
      path.add(limb);
      node = limb.other(node);
      limb = Objects.requireNonNull(cameBy.get(node));
    }
    path.add(first);
    Collections.reverse(path);
    return path;
  }
}
