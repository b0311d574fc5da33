package rungbook.circuit.solver;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.NetworkChange;

/** Which branches and cores lie between two nodes, and the order of elimination: one for all samples and states. */
public final class NetworkStructure {

  private final CircuitNetwork network;
  private final EliminationOrder order;
  private final Map<Long, List<Integer>> branches = new HashMap<>();
  private final Map<Long, List<Integer>> cores = new HashMap<>();

  private NetworkStructure(CircuitNetwork network, EliminationOrder order) {
    this.network = network;
    this.order = order;
    for (int i = 0; i < network.branches().size(); i++) {
      Branch branch = network.branches().get(i);
      branches.computeIfAbsent(pair(branch.a(), branch.b()), nodes -> new ArrayList<>()).add(i);
    }
    for (int i = 0; i < network.cores().size(); i++) {
      int core = i;
      pairs(network.cores().get(i).nodes()).stream().map(pair -> pair(pair[0], pair[1])).distinct()
          .forEach(pair -> cores.computeIfAbsent(pair, nodes -> new ArrayList<>()).add(core));
    }
  }

  /** The structure in which these cases are solved. */
  public static NetworkStructure of(CircuitNetwork network, Collection<FaultCase> cases) {
    var edges = new ArrayList<int[]>();
    network.branches().forEach(branch -> edges.add(new int[] {branch.a(), branch.b()}));
    network.cores().forEach(core -> edges.addAll(pairs(core.nodes())));
    cases.stream().flatMap(fault -> fault.changes().stream()).forEach(change -> addEdge(change, edges));
    return new NetworkStructure(network, EliminationOrder.of(network.nodeCount(), edges));
  }

  private static List<int[]> pairs(int[] nodes) {
    var pairs = new ArrayList<int[]>();
    for (int i = 0; i < nodes.length; i++) {
      for (int j = i + 1; j < nodes.length; j++) {
        pairs.add(new int[] {nodes[i], nodes[j]});
      }
    }
    return pairs;
  }

  private static void addEdge(NetworkChange change, List<int[]> edges) {
    if (change instanceof NetworkChange.Bridge bridge) {
      edges.add(new int[] {bridge.a(), bridge.b()});
    } else if (change instanceof NetworkChange.Join join) {
      edges.add(new int[] {join.a(), join.b()});
    }
  }

  private static long pair(int a, int b) {
    return (long) Math.min(a, b) << Integer.SIZE | Math.max(a, b);
  }

  public CircuitNetwork network() {
    return network;
  }

  public EliminationOrder order() {
    return order;
  }

  /** The branches between two nodes, by index. */
  List<Integer> branchesBetween(int a, int b) {
    return branches.getOrDefault(pair(a, b), List.of());
  }

  /** The transformer cores that have both of these nodes, by index. */
  List<Integer> coresBetween(int a, int b) {
    return cores.getOrDefault(pair(a, b), List.of());
  }
}
