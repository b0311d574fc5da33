package rungbook.pack.path;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** Where a way on can end. */
public final class FaultsAhead {

  private FaultsAhead() {}

  /** Whether every end behind a way is a finding that names a fault; another tree may end elsewhere. */
  public static boolean only(Tree tree, Way way) {
    var seen = new BitSet();
    Deque<Way> open = new ArrayDeque<>();
    open.add(way);
    while (!open.isEmpty()) {
      if (!(open.remove().target() instanceof Target.ToStep to)) {
        return false;
      }
      Step step = tree.steps().get(to.step());
      if (step instanceof Step.Finding finding && finding.faults().isEmpty()) {
        return false;
      }
      if (!(step instanceof Step.Finding) && !seen.get(to.step())) {
        open.addAll(step.ways());
      }
      seen.set(to.step());
    }
    return true;
  }
}
