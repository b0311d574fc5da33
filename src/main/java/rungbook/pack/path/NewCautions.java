package rungbook.pack.path;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import rungbook.rules.flow.DataflowSolver;
import rungbook.rules.flow.FlowGraph;
import rungbook.tree.NameRef;
import rungbook.tree.Tree;

/** Which cautions a path may bring to a step for the first time. */
public final class NewCautions {

  private final Map<String, Integer> bits = new HashMap<>();
  private final List<DataflowSolver> unseen = new ArrayList<>();

  public NewCautions(Tree tree, FlowGraph graph) {
    tree.steps().forEach(step -> step.header().cautions()
        .forEach(caution -> bits.putIfAbsent(caution.key(), bits.size())));
    for (int word = 0; word << 6 < bits.size(); word++) {
      unseen.add(solve(tree, graph, word));
    }
  }

  /** A caution is unseen until a step names it. */
  private DataflowSolver solve(Tree tree, FlowGraph graph, int word) {
    long[] seen = new long[tree.steps().size()];
    for (int step = 0; step < seen.length; step++) {
      for (NameRef caution : tree.steps().get(step).header().cautions()) {
        int bit = bit(caution.key());
        seen[step] |= bit >> 6 == word ? 1L << bit : 0;
      }
    }
    return DataflowSolver.solve(graph, -1, new long[seen.length], seen, null, null);
  }

  private int bit(String caution) {
    return Objects.requireNonNull(bits.get(caution), "some step names it");
  }

  /** Whether on some path no step before this one names the caution. */
  public boolean isNew(int step, String key) {
    int bit = bit(key);
    return (unseen.get(bit >> 6).at(step) & 1L << bit) != 0;
  }
}
