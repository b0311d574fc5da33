package rungbook.circuit.sequence;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import rungbook.circuit.network.Branch;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.NetworkChange;
import rungbook.circuit.network.TransformerCore;

/**
 * The groups of nodes of a network that have only ground in common, such as the line voltage outdoors and all that the
 * indoor unit feeds. No voltage of one depends on anything in another. A part is in one island with all its limbs.
 */
public final class Islands {

  /** Of what two islands have a part in: the whole network. */
  public static final int WHOLE = -1;

  private final int[] root;
  private final int[] ofNode;
  private final int[] ofBranch;
  private final int[][] branches;

  public Islands(CircuitNetwork network) {
    root = IntStream.range(0, network.nodeCount()).toArray();
    var firstOfPart = new HashMap<String, Integer>();
    for (Branch branch : network.branches()) {
      join(branch.a(), branch.b());
      int node = Math.max(branch.a(), branch.b());
      join(node, firstOfPart.merge(branch.part(), node, (first, other) -> first == 0 ? other : first));
    }
    for (TransformerCore core : network.cores()) {
      Arrays.stream(core.nodes()).forEach(a -> Arrays.stream(core.nodes()).forEach(b -> join(a, b)));
    }
    ofNode = numbered();
    ofBranch = network.branches().stream().mapToInt(branch -> ofNode[Math.max(branch.a(), branch.b())]).toArray();
    branches = IntStream.range(0, Arrays.stream(ofNode).max().orElse(0) + 1)
        .mapToObj(one -> IntStream.range(0, ofBranch.length).filter(branch -> ofBranch[branch] == one).toArray())
        .toArray(int[][]::new);
  }

  /** Ground joins nothing. */
  private void join(int a, int b) {
    if (a != 0 && b != 0) {
      root[root(a)] = root(b);
    }
  }

  private int root(int node) {
    int at = node;
    while (root[at] != at) {
      root[at] = root[root[at]];
      at = root[at];
    }
    return at;
  }

  /** Ground counts to the first. */
  private int[] numbered() {
    Map<Integer, Integer> numbers = new HashMap<>();
    int[] of = new int[root.length];
    for (int node = 1; node < of.length; node++) {
      of[node] = numbers.computeIfAbsent(root(node), key -> numbers.size());
    }
    return of;
  }

  int count() {
    return branches.length;
  }

  int ofBranch(int branch) {
    return ofBranch[branch];
  }

  /** The branches of an island. */
  int[] branches(int island) {
    return branches[island];
  }

  /** The island in which both nodes are, ground aside; {@link #WHOLE} if they are in two. */
  public int ofNodes(int a, int b) {
    return a == 0 || b == 0 || ofNode[a] == ofNode[b] ? ofNode[Math.max(a, b)] : WHOLE;
  }

  /** The island in which a change is. */
  int ofChange(NetworkChange change, List<TransformerCore> cores) {
    if (change instanceof NetworkChange.Open open) {
      return ofBranch[open.branch()];
    }
    if (change instanceof NetworkChange.Raise raise) {
      return ofBranch[raise.branch()];
    }
    if (change instanceof NetworkChange.Derate derate) {
      return ofBranch[derate.branch()];
    }
    if (change instanceof NetworkChange.Overload overload) {
      return ofBranch[overload.branch()];
    }
    if (change instanceof NetworkChange.Core core) {
      return ofNode[Arrays.stream(cores.get(core.index()).nodes()).max().orElse(0)];
    }
    return change instanceof NetworkChange.Bridge bridge ? ofNodes(bridge.a(), bridge.b())
        : ofNodes(((NetworkChange.Join) change).a(), ((NetworkChange.Join) change).b());
  }
}
