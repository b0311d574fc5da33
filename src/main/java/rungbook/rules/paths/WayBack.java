package rungbook.rules.paths;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import rungbook.action.EquipmentCondition;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/**
 * From which steps of several trees some path, without a repair, crosses into one of them; whatever is answered. The
 * steps of all trees are numbered, those of one tree after those of another.
 */
final class WayBack {

  static final int NO_STEP = -1;

  private final Tree sought;
  private final Map<String, Tree> trees;
  private final Map<String, Integer> firstOf = new HashMap<>();
  private final int[][] onward;
  private final BitSet entries = new BitSet();
  private final BitSet leading = new BitSet();

  private WayBack(Tree sought, Map<String, Tree> trees) {
    this.sought = sought;
    this.trees = trees;
    int steps = 0;
    for (Tree tree : trees.values()) {
      firstOf.put(tree.id(), steps);
      steps += tree.steps().size();
    }
    this.onward = new int[steps][];
    trees.values().forEach(this::connect);
  }

  /** @param trees by id, the tree itself among them */
  static WayBack to(Tree tree, Map<String, Tree> trees) {
    WayBack back = new WayBack(tree, trees);
    back.search();
    return back;
  }

  /** Whether a path that is at a step may come back. */
  boolean leadsFrom(Tree tree, int step) {
    return leading.get(number(tree, step));
  }

  /** Whether a way from a step of another tree, or of the same by its file's name, leads to a step. */
  boolean isEntry(Tree tree, int step) {
    return entries.get(number(tree, step));
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

  private int number(Tree tree, int step) {
    return Objects.requireNonNull(firstOf.get(tree.id())) + step;
  }

  private void connect(Tree tree) {
    int first = number(tree, 0);
    for (int step = 0; step < tree.steps().size(); step++) {
      Step from = tree.steps().get(step);
      int[] targets = new int[from.ways().size()];
      boolean crosses = false;
      for (int way = 0; way < targets.length; way++) {
        Target target = from.ways().get(way).target();
        targets[way] = target instanceof Target.ToStep to ? first + to.step() : crossing(target);
        crosses |= target instanceof Target.ToTree to && to.tree().equals(sought.id()) && targets[way] != NO_STEP;
      }
      boolean repairs = repairs(from);
      onward[first + step] = repairs ? new int[0] : targets;
      leading.set(first + step, crosses && !repairs);
    }
  }

  /** Where a way leads that crosses into another tree, or leads to the same by its file's name. */
  private int crossing(Target target) {
    Tree next = target instanceof Target.ToTree to ? trees.get(to.tree()) : null;
    int entry = next == null ? NO_STEP : entry((Target.ToTree) target, next);
    if (next == null || entry == NO_STEP) {
      return NO_STEP;
    }
    int number = number(next, entry);
    entries.set(number);
    return number;
  }

  private void search() {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int step = onward.length - 1; step >= 0; step--) {
        if (!leading.get(step) && leadsOn(onward[step])) {
          leading.set(step);
          changed = true;
        }
      }
    }
  }

  private boolean leadsOn(int[] targets) {
    for (int target : targets) {
      if (target != NO_STEP && leading.get(target)) {
        return true;
      }
    }
    return false;
  }
}
