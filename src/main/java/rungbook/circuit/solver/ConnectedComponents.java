package rungbook.circuit.solver;

import java.util.BitSet;

/** The connected components of a network (union-find). Nodes are indices; 0 is ground. */
final class ConnectedComponents {

  private final int[] parent;

  ConnectedComponents(int nodeCount) {
    parent = new int[nodeCount];
    for (int i = 0; i < nodeCount; i++) {
      parent[i] = i;
    }
  }

  int root(int node) {
    int at = node;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  void join(int a, int b) {
    int x = root(a);
    int y = root(b);
    parent[Math.max(x, y)] = Math.min(x, y); // ground is always a root
  }

  boolean connected(int a, int b) {
    return root(a) == root(b);
  }

  /** One node of each component that is not connected to ground. */
  BitSet floating() {
    var floating = new BitSet();
    for (int i = 1; i < parent.length; i++) {
      floating.set(i, parent[i] == i);
    }
    return floating;
  }
}
