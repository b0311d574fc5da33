package rungbook.circuit.network;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.Part;
import rungbook.system.Terminal;

/** A control system as nodes and branches. Node 0 is ground; every terminal has a node. */
public final class CircuitNetwork {

  private final ControlSystem system;
  private final double hertz;
  private final Map<Terminal, Integer> nodes;
  private final int nodeCount;
  private final List<Branch> branches;
  private final List<TransformerCore> cores;
  private final List<SourceBranch> sources;
  private final Map<String, Integer> branchByKey;

  CircuitNetwork(ControlSystem system, double hertz, Map<Terminal, Integer> nodes, int nodeCount, List<Branch> branches,
      List<TransformerCore> cores, List<SourceBranch> sources, Map<String, Integer> branchByKey) {
    this.system = system;
    this.hertz = hertz;
    this.nodes = Map.copyOf(nodes);
    this.nodeCount = nodeCount;
    this.branches = List.copyOf(branches);
    this.cores = List.copyOf(cores);
    this.sources = List.copyOf(sources);
    this.branchByKey = Map.copyOf(branchByKey);
  }

  /** Builds the network of a system that was read without problems. */
  public static CircuitNetwork of(ControlSystem system) {
    return new NetworkBuilder(system).build();
  }

  public ControlSystem system() {
    return system;
  }

  public double hertz() {
    return hertz;
  }

  /** The node of each terminal that has one, ground aside. */
  public Map<Terminal, Integer> nodes() {
    return nodes;
  }

  public int nodeCount() {
    return nodeCount;
  }

  public List<Branch> branches() {
    return branches;
  }

  public List<TransformerCore> cores() {
    return cores;
  }

  public List<SourceBranch> sources() {
    return sources;
  }

  /** The node of a point at a location; empty if the system has no such terminal or nothing is wired to it. */
  public Optional<Integer> node(String point, String place) {
    return node(new Terminal(Names.key(point), Names.key(place)));
  }

  public Optional<Integer> node(Terminal terminal) {
    return terminal.isGround() ? Optional.of(0) : Optional.ofNullable(nodes.get(terminal));
  }

  /** The index of the branch with this key; −1 if there is none. */
  int indexOf(String key) {
    return branchByKey.getOrDefault(key, -1);
  }

  /**
   * Indices of a part's branches; if no part has this key, of the branch or of the assembly with this key; empty if
   * there is none.
   */
  public int[] branchesOf(String key) {
    int[] ofPart = indices(branch -> branch.part().equals(key));
    Set<String> members = system.vocabulary().assemblies().getOrDefault(key, Set.of());
    return ofPart.length > 0 ? ofPart
        : indices(branch -> branch.key().equals(key) || members.contains(branch.part()));
  }

  /** Indices of the conductors and wires that end at a node: those that come off when its terminal is disconnected. */
  public int[] wiresAt(int node) {
    return indices(branch -> (branch.a() == node || branch.b() == node) && isWire(branch));
  }

  /** Index of the branch to clamp at a node: the first wire that ends there, else the first contact, fuse or load. */
  public Optional<Integer> conductorAt(int node) {
    int[] wires = wiresAt(node);
    int[] any = wires.length > 0 ? wires
        : indices(branch -> branch.kind() != Branch.Kind.FIXED && (branch.a() == node || branch.b() == node));
    return any.length == 0 ? Optional.empty() : Optional.of(any[0]);
  }

  /** Whether a branch is a conductor or a wire, which comes off a terminal. */
  public boolean isWire(Branch branch) {
    return branchByKey.containsKey(branch.key())
        && system.part(branch.part()).filter(part -> part instanceof Part.Cable || part instanceof Part.Wire)
            .isPresent();
  }

  private int[] indices(Predicate<Branch> wanted) {
    return IntStream.range(0, branches.size()).filter(i -> wanted.test(branches.get(i))).toArray();
  }
}
