package rungbook.ladder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.system.ControlSystem;
import rungbook.system.Part;
import rungbook.system.PartBranch;
import rungbook.system.Terminal;

/**
 * The limbs of a system between numbered nodes. Points that joints make one piece of metal are one node; a joint to
 * ground is a limb, since ground joins every circuit.
 */
final class CircuitGraph {

  private static final int GROUNDING = -1;

  private final PointNames points;
  private final ElementReader elements;
  private final Map<Terminal, Terminal> joined = new HashMap<>();
  private final Map<Terminal, Integer> numbers = new HashMap<>();
  private final List<List<String>> names = new ArrayList<>();
  private final Map<Integer, List<String>> joints = new HashMap<>();
  private final Set<Integer> grounds = new HashSet<>();
  private final List<Limb> limbs = new ArrayList<>();

  /**
   * A limb between two nodes.
   *
   * @param isSource a supply's leg or a transformer's secondary winding
   * @param isFeed whether a source reaches its rail through it: all but contacts and loads
   */
  record Limb(Element element, Part of, int a, int b, boolean isSource, boolean isFeed) {

    int other(int node) {
      return node == a ? b : a;
    }
  }

  private CircuitGraph(ControlSystem system) {
    this.points = new PointNames(system);
    this.elements = new ElementReader(system);
  }

  static CircuitGraph of(ControlSystem system) {
    var graph = new CircuitGraph(system);
    system.parts(Part.Joint.class).flatMap(joint -> joint.branches().stream()).forEach(graph::join);
    system.parts().forEach(graph::add);
    return graph;
  }

  private void join(PartBranch branch) {
    Terminal a = root(branch.a());
    Terminal b = root(branch.b());
    if (!a.isGround() && !b.isGround() && !a.equals(b)) {
      joined.put(b, a);
    }
  }

  private Terminal root(Terminal terminal) {
    Terminal at = terminal;
    while (joined.containsKey(at)) {
      at = joined.get(at);
    }
    return at;
  }

  private void add(Part part) {
    for (int i = 0; i < part.branches().size(); i++) {
      PartBranch branch = part.branches().get(i);
      int a = number(branch.a());
      int b = number(branch.b());
      if (part instanceof Part.Joint && a == b && !branch.a().isGround()) {
        joints.computeIfAbsent(a, node -> new ArrayList<>()).add(branch.name());
      } else {
        limbs.add(new Limb(elements.of(part, branch), part, a, b,
            part instanceof Part.Supply || (part instanceof Part.Transformer && i > 0), elements.isFeed(part)));
      }
    }
  }

  /** Ground is a node of its own at each of its ends: no island goes through it. */
  private int number(Terminal terminal) {
    Terminal root = root(terminal);
    int node = terminal.isGround() ? named() : numbers.computeIfAbsent(root, key -> named());
    String name = points.of(terminal);
    if (!names.get(node).contains(name)) {
      names.get(node).add(name);
    }
    if (terminal.isGround()) {
      grounds.add(node);
    }
    return node;
  }

  private int named() {
    names.add(new ArrayList<>());
    return names.size() - 1;
  }

  boolean isGround(int node) {
    return grounds.contains(node);
  }

  Node node(int node) {
    return new Node(isGround(node) ? Node.Kind.GROUND : Node.Kind.POINT, names.get(node),
        joints.getOrDefault(node, List.of()));
  }

  /** The limbs that are connected, each set with the limbs of one source or of none. */
  List<Island> islands() {
    int[] group = new int[names.size()];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    limbs.forEach(limb -> group[find(group, limb.a())] = find(group, limb.b()));
    legsTogether(group);
    var islands = new LinkedHashMap<Integer, List<Limb>>();
    limbs.forEach(limb -> islands.computeIfAbsent(isGrounding(limb) ? GROUNDING : find(group, limb.a()),
        key -> new ArrayList<>()).add(limb));
    return islands.values().stream().map(of -> new Island(this, of)).toList();
  }

  /** A conductor from ground to ground is in no circuit; all of them are shown together. */
  boolean isGrounding(Limb limb) {
    return isGround(limb.a()) && isGround(limb.b()) && !limb.isSource();
  }

  /** The legs of a supply are one source, though ground may be between them. */
  private void legsTogether(int[] group) {
    for (Limb limb : limbs) {
      limbs.stream().filter(other -> limb.isSource() && other.isSource() && other.of() == limb.of())
          .forEach(other -> group[find(group, limb.a())] = find(group, other.a()));
    }
  }

  private static int find(int[] group, int node) {
    int at = node;
    while (group[at] != at) {
      at = group[at];
    }
    return at;
  }
}
