package rungbook.rules.paths;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.action.EquipmentCondition;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** From which steps of several trees some path, without a repair, crosses into one of them; whatever is answered. */
final class WayBack {

  static final int NO_STEP = -1;

  private final Tree first;
  private final Map<String, Tree> trees;
  private final Map<String, boolean[]> leads;

  private WayBack(Tree first, Map<String, Tree> trees) {
    this.first = first;
    this.trees = trees;
    this.leads = trees.values().stream().collect(Collectors.toMap(Tree::id, tree -> new boolean[tree.steps().size()]));
  }

  static WayBack to(Tree first, Map<String, Tree> trees) {
    WayBack back = new WayBack(first, trees);
    boolean changed = true;
    while (changed) {
      changed = false;
      for (Tree tree : trees.values()) {
        changed |= back.sweep(tree);
      }
    }
    return back;
  }

  /** Whether a path that is at a step may come back. */
  boolean leadsFrom(Tree tree, int step) {
    return leads(tree.id())[step];
  }

  /** Whether a step repairs something: after it, the next time around is not the same. */
  static boolean repairs(Step step) {
    for (int i = 0; i < step.actions().size(); i++) {
      if (step.actions().get(i).kind().begins(EquipmentCondition.REPAIRED)) {
        return true;
      }
    }
    return false;
  }

  /** The step of another tree to which a way leads; {@link #NO_STEP} if there is none of this name. */
  static int entry(Target.ToTree to, Tree tree) {
    for (int step = 0; step < tree.steps().size(); step++) {
      if (to.step().isEmpty() || to.step().get().equals(tree.steps().get(step).id())) {
        return step;
      }
    }
    return NO_STEP;
  }

  private boolean sweep(Tree tree) {
    boolean[] leading = leads(tree.id());
    boolean changed = false;
    for (int step = leading.length - 1; step >= 0; step--) {
      if (!leading[step] && leadsOn(tree, tree.steps().get(step))) {
        leading[step] = true;
        changed = true;
      }
    }
    return changed;
  }

  private boolean leadsOn(Tree tree, Step step) {
    List<Way> ways = step.ways();
    for (int way = 0; way < ways.size(); way++) {
      if (leads(ways.get(way).target(), tree)) {
        return !repairs(step);
      }
    }
    return false;
  }

  private boolean leads(Target target, Tree tree) {
    if (target instanceof Target.ToStep to) {
      return leads(tree.id())[to.step()];
    }
    return target instanceof Target.ToTree to
        && Optional.ofNullable(trees.get(to.tree())).filter(next -> leadsInto(next, entry(to, next))).isPresent();
  }

  @SuppressWarnings("ReferenceEquality") // a tree's value is its whole text
  private boolean leadsInto(Tree next, int step) {
    return step != NO_STEP && (next == first || leads(next.id())[step]);
  }

  private boolean[] leads(String tree) {
    return Objects.requireNonNull(leads.get(tree));
  }
}
