package rungbook.circuit.network;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.Terminal;

/** A system as nodes and links. Node 0 is ground; every terminal has a node. */
public final class CircuitNetwork {

  private final ControlSystem system;
  private final double hertz;
  private final Map<Terminal, Integer> nodes;
  private final int nodeCount;
  private final List<Branch> links;
  private final List<TransformerCore> couplers;
  private final List<SourceBranch> drives;
  private final Map<String, Integer> linkByKey;

  CircuitNetwork(ControlSystem system, double hertz, Map<Terminal, Integer> nodes, int nodeCount, List<Branch> links,
      List<TransformerCore> couplers, List<SourceBranch> drives, Map<String, Integer> linkByKey) {
    this.system = system;
    this.hertz = hertz;
    this.nodes = Map.copyOf(nodes);
    this.nodeCount = nodeCount;
    this.links = List.copyOf(links);
    this.couplers = List.copyOf(couplers);
    this.drives = List.copyOf(drives);
    this.linkByKey = Map.copyOf(linkByKey);
  }

  /** Wires a system that was read without problems. */
  public static CircuitNetwork of(ControlSystem system) {
    return new NetworkBuilder(system).wire();
  }

  public ControlSystem system() {
    return system;
  }

  public double hertz() {
    return hertz;
  }

  public int nodeCount() {
    return nodeCount;
  }

  public List<Branch> links() {
    return links;
  }

  public List<TransformerCore> couplers() {
    return couplers;
  }

  public List<SourceBranch> drives() {
    return drives;
  }

  /** The node of a point at a place; empty if the system has no such terminal or nothing is wired to it. */
  public Optional<Integer> node(String point, String place) {
    return node(new Terminal(Names.key(point), Names.key(place)));
  }

  public Optional<Integer> node(Terminal terminal) {
    return terminal.isGround() ? Optional.of(0) : Optional.ofNullable(nodes.get(terminal));
  }

  int link(String key) {
    return linkByKey.getOrDefault(key, -1);
  }

  /** The links of a part or, if no part is called so, the one limb; empty if neither is. */
  public int[] linksOf(String key) {
    int[] ofPart = indices(link -> link.part().equals(key));
    return ofPart.length > 0 ? ofPart : indices(link -> link.key().equals(key));
  }

  /** What comes off when the wires are taken off a terminal: conductors and wires that end there. */
  public int[] wiresAt(int node) {
    return indices(link -> (link.a() == node || link.b() == node) && isWire(link));
  }

  /** The conductor to clamp at a node: the first wire that ends there, else the first link. */
  public Optional<Integer> conductorAt(int node) {
    int[] wires = wiresAt(node);
    int[] any = wires.length > 0 ? wires
        : indices(link -> link.kind() != Branch.Kind.FIXED && (link.a() == node || link.b() == node));
    return any.length == 0 ? Optional.empty() : Optional.of(any[0]);
  }

  private boolean isWire(Branch link) {
    return linkByKey.containsKey(link.key())
        && system.part(link.part()).filter(part -> part instanceof Part.Cable || part instanceof Part.Wire).isPresent();
  }

  private int[] indices(java.util.function.Predicate<Branch> wanted) {
    return java.util.stream.IntStream.range(0, links.size()).filter(i -> wanted.test(links.get(i))).toArray();
  }
}
