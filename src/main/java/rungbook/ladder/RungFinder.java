package rungbook.ladder;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.ladder.CircuitGraph.Limb;
import rungbook.system.Part;

/**
 * Divides an island into rungs, each limb on one of them: first the source with what feeds the rails, then from each
 * node that is drawn the shortest ways on, to the right rail if one leads there (an ear decomposition).
 */
final class RungFinder {

  private final Island island;
  private final CircuitGraph graph;
  private final RungNumbers numbers;
  private final Set<Limb> left = new LinkedHashSet<>();
  private final Map<Integer, List<Limb>> atNode = new HashMap<>();
  private final Map<Integer, Integer> drawnIn = new HashMap<>();
  private final List<Rung> rungs = new ArrayList<>();
  private final Deque<Integer> pending = new ArrayDeque<>();
  private int leftRail;
  private int rightRail = -1;

  RungFinder(Island island, RungNumbers numbers) {
    this.island = island;
    this.graph = island.graph();
    this.numbers = numbers;
    left.addAll(island.limbs());
    island.limbs().forEach(limb -> {
      at(limb.a()).add(limb);
      at(limb.b()).add(limb);
    });
  }

  private List<Limb> at(int node) {
    return atNode.computeIfAbsent(node, key -> new ArrayList<>());
  }

  Node left() {
    return node(leftRail);
  }

  /** The left rail where there is no other. */
  Node right() {
    return rightRail < 0 ? left() : node(rightRail);
  }

  List<Rung> rungs() {
    List<Limb> legs = island.legs();
    if (legs.isEmpty()) {
      leftRail = island.limbs().get(0).a();
      drawnIn.put(leftRail, 0);
      pending.add(leftRail);
    } else {
      drawSource(legs);
    }
    while (!left.isEmpty()) {
      drawFrom(pending.isEmpty() ? unconnected() : pending.poll());
    }
    return rungs;
  }

  /** A node of a limb that no rung has reached, such as one behind ground. */
  private int unconnected() {
    int node = left.iterator().next().a();
    drawnIn.putIfAbsent(node, 0);
    return node;
  }

  private void drawSource(List<Limb> legs) {
    left.removeAll(legs);
    var path = new ArrayList<Limb>();
    leftRail = feed(legs.get(0).a(), path);
    Collections.reverse(path);
    path.addAll(legs);
    rightRail = feed(legs.get(legs.size() - 1).b(), path);
    drawnIn.put(leftRail, 0);
    drawnIn.put(rightRail, 0);
    pending.addAll(List.of(leftRail, rightRail));
    draw(leftRail, path);
  }

  /** Follows what feeds a rail to the first node with more than one way on. */
  private int feed(int from, List<Limb> path) {
    int node = from;
    List<Limb> ways = waysOn(node);
    while (ways.size() == 1 && ways.get(0).isFeed() && !graph.isGround(node)) {
      Limb limb = ways.get(0);
      left.remove(limb);
      path.add(limb);
      node = limb.other(node);
      ways = waysOn(node);
    }
    return node;
  }

  /** A bond to ground is no way on. */
  private List<Limb> waysOn(int node) {
    return at(node).stream().filter(limb -> left.contains(limb) && !graph.isGround(limb.other(node))).toList();
  }

  private void drawFrom(int node) {
    at(node).stream().filter(left::contains).findFirst().ifPresent(limb -> {
      pending.push(node);
      List<Limb> path = new PathSearch(graph, atNode, left, drawnIn, rightRail).from(node, limb);
      left.removeAll(path);
      draw(node, path);
    });
  }

  private void draw(int start, List<Limb> path) {
    int number = numbers.next();
    var nodes = new ArrayList<Integer>(List.of(start));
    path.forEach(limb -> nodes.add(next(limb, nodes.get(nodes.size() - 1))));
    var elements = new ArrayList<>(path.stream().map(Limb::element).toList());
    String name = name(path);
    int end = nodes.get(nodes.size() - 1);
    int from = drawnIn.getOrDefault(start, 0);
    int to = drawnIn.getOrDefault(end, 0);
    List<Integer> fresh = nodes.stream().filter(node -> !graph.isGround(node) && !drawnIn.containsKey(node)).toList();
    fresh.forEach(node -> drawnIn.put(node, number));
    for (int i = fresh.size() - 1; i >= 0; i--) {
      pending.push(fresh.get(i));
    }
    boolean isBackward = start != end && (start == rightRail || end == leftRail);
    if (isBackward) {
      Collections.reverse(nodes);
      Collections.reverse(elements);
    }
    rungs.add(new Rung(number, name, nodes.stream().map(this::node).toList(), elements, isBackward ? to : from,
        isBackward ? from : to));
  }

  /** The legs of a supply may have ground between them, which is two nodes. */
  private int next(Limb limb, int node) {
    return limb.a() == node || (limb.b() != node && graph.isGround(node)) ? limb.b() : limb.a();
  }

  private static String name(List<Limb> path) {
    List<Limb> named = path.stream().filter(Limb::isSource).toList();
    List<Limb> loads = path.stream()
        .filter(limb -> limb.of() instanceof Part.Load || limb.of() instanceof Part.Transformer).toList();
    List<Limb> contacts = path.stream().filter(limb -> limb.of() instanceof Part.Switch).toList();
    List<Limb> shown = !named.isEmpty() ? named : !loads.isEmpty() ? loads : !contacts.isEmpty() ? contacts : path;
    return shown.stream().map(limb -> limb.of().name()).distinct().collect(Collectors.joining(", "));
  }

  private Node node(int number) {
    Node node = graph.node(number);
    return number == leftRail ? node.as(Node.Kind.LEFT_RAIL) : number == rightRail ? node.as(Node.Kind.RIGHT_RAIL)
        : node;
  }
}
