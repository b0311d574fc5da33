package rungbook.ladder;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Queue;
import java.util.Set;
import rungbook.system.ControlSystem;
import rungbook.system.Terminal;

/** Finds the shortest ways from rail to rail through the points of a system. */
public final class RailPaths {

  /** So many beginnings of ways are tried; in a circuit with more crossings the way may end before the other rail. */
  private static final int MOST_TRIED = 20_000;

  /** A way around through the contact of another rung, or through a capacitor, is rarely the one that is meant. */
  private static final Set<Symbol> AROUND = Set.of(Symbol.CONTACT, Symbol.CONTACT_NORMALLY_CLOSED, Symbol.CAPACITOR);

  /** What it counts against a wire. */
  private static final int FAR = 4;

  private final Ladder ladder;
  private final PointNames points;

  /** @param limb the element between two nodes */
  private record Link(Element limb, Node to) {}

  /**
   * A way so far, its last node first.
   *
   * @param cost of the elements on it
   * @param number in the order in which ways were begun
   */
  private record Reached(Node node, Optional<Link> by, Optional<Reached> before, int cost, int number) {

    static Reached start(Node node) {
      return new Reached(node, Optional.empty(), Optional.empty(), 0, 0);
    }

    Reached by(Link link, int next) {
      int more = AROUND.contains(link.limb().symbol()) ? FAR : 1;
      return new Reached(link.to(), Optional.of(link), Optional.of(this), cost + more, next);
    }

    boolean passes(Node other) {
      return node.equals(other) || before.filter(one -> one.passes(other)).isPresent();
    }
  }

  private RailPaths(Ladder ladder, PointNames points) {
    this.ladder = ladder;
    this.points = points;
  }

  /** @param system one that was read without problems */
  public static RailPaths of(ControlSystem system) {
    return new RailPaths(Ladder.of(system), new PointNames(system));
  }

  public Ladder ladder() {
    return ladder;
  }

  /** What the ladder calls a point. */
  public String name(Terminal terminal) {
    return points.of(terminal);
  }

  /**
   * The ways through points: one where a way passes all of them, else one for each; ground is no point of a way. None
   * for a point of which the circuit knows nothing.
   */
  public List<RailPath> through(Collection<Terminal> terminals) {
    List<String> names = terminals.stream().filter(one -> !one.isGround()).map(points::of).distinct().toList();
    Optional<RailPath> together = through(names);
    return together.isPresent() || names.size() < 2 ? together.stream().toList()
        : names.stream().flatMap(name -> through(List.of(name)).stream()).distinct().toList();
  }

  private Optional<RailPath> through(List<String> names) {
    return names.isEmpty() ? Optional.empty()
        : ladder.blocks().stream().flatMap(block -> through(names, block).stream()).findFirst();
  }

  private static Optional<RailPath> through(List<String> names, VoltageBlock block) {
    Map<Node, List<Link>> links = links(block);
    Set<Node> wanted = new HashSet<>();
    for (String name : names) {
      Optional<Node> node = links.keySet().stream().filter(one -> one.names().contains(name)).findFirst();
      if (node.isEmpty()) {
        return Optional.empty();
      }
      wanted.add(node.get());
    }
    boolean isSource = List.of(block.left(), block.right()).containsAll(wanted);
    return (isSource ? source(block) : Optional.<Reached>empty()).or(() -> search(block, links, wanted))
        .map(reached -> path(block, reached, wanted));
  }

  /** From rail to rail there is the source, whatever else is. */
  private static Optional<Reached> source(VoltageBlock block) {
    return block.rungs().stream().findFirst().filter(rung -> isFromRailToRail(rung, block))
        .map(rung -> {
          Reached reached = Reached.start(rung.nodes().get(0));
          for (int i = 0; i < rung.elements().size(); i++) {
            reached = reached.by(new Link(rung.elements().get(i), rung.nodes().get(i + 1)), i);
          }
          return reached;
        });
  }

  private static boolean isFromRailToRail(Rung rung, VoltageBlock block) {
    return rung.nodes().get(0).equals(block.left()) && rung.nodes().get(rung.nodes().size() - 1).equals(block.right());
  }

  private static Map<Node, List<Link>> links(VoltageBlock block) {
    var links = new HashMap<Node, List<Link>>();
    for (Rung rung : block.rungs()) {
      for (int i = 0; i < rung.elements().size(); i++) {
        Node a = rung.nodes().get(i);
        Node b = rung.nodes().get(i + 1);
        links.computeIfAbsent(a, any -> new ArrayList<>()).add(new Link(rung.elements().get(i), b));
        links.computeIfAbsent(b, any -> new ArrayList<>()).add(new Link(rung.elements().get(i), a));
      }
    }
    return links;
  }

  /** The shortest way to the right rail; else the shortest that passes what is wanted. */
  private static Optional<Reached> search(VoltageBlock block, Map<Node, List<Link>> links, Set<Node> wanted) {
    Queue<Reached> open = new PriorityQueue<>(Comparator.comparingInt(Reached::cost).thenComparingInt(Reached::number));
    open.add(Reached.start(block.left()));
    int begun = 0;
    Optional<Reached> passing = Optional.empty();
    for (int tried = 0; !open.isEmpty() && tried < MOST_TRIED; tried++) {
      Reached here = open.remove();
      if (wanted.stream().allMatch(here::passes)) {
        passing = passing.or(() -> Optional.of(here));
        if (here.node().equals(block.right())) {
          return Optional.of(here);
        }
      }
      if (!here.node().equals(block.right())) {
        for (Link link : links.getOrDefault(here.node(), List.of())) {
          if (!here.passes(link.to())) {
            open.add(here.by(link, ++begun));
          }
        }
      }
    }
    return passing;
  }

  private static RailPath path(VoltageBlock block, Reached end, Set<Node> wanted) {
    var nodes = new ArrayDeque<Node>();
    var elements = new ArrayDeque<Element>();
    for (Optional<Reached> at = Optional.of(end); at.isPresent(); at = at.get().before()) {
      nodes.addFirst(at.get().node());
      at.get().by().ifPresent(link -> elements.addFirst(link.limb()));
    }
    return new RailPath(rung(block, List.copyOf(nodes), List.copyOf(elements), wanted), block.isLine(),
        List.copyOf(nodes), List.copyOf(elements));
  }

  /** The one that has most of what is between the points, or else beside them. */
  private static Rung rung(VoltageBlock block, List<Node> nodes, List<Element> elements, Set<Node> wanted) {
    List<Integer> at = wanted.stream().map(nodes::indexOf).sorted().toList();
    int from = at.get(0);
    int to = at.get(at.size() - 1);
    List<Element> between = elements.subList(from == to ? Math.max(0, from - 1) : from, Math.min(elements.size(),
        from == to ? to + 1 : to));
    Rung most = block.rungs().get(0);
    for (Rung rung : block.rungs()) {
      most = count(rung, between) > count(most, between) ? rung : most;
    }
    return most;
  }

  private static long count(Rung rung, List<Element> elements) {
    return elements.stream().filter(rung.elements()::contains).count();
  }
}
