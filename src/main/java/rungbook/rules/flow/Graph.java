package rungbook.rules.flow;

import java.util.Arrays;
import java.util.List;
import rungbook.markdown.Section;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/**
 * The graph of a tree's steps, by their index in {@link Tree#steps}. Ways to other trees and broken links are not
 * edges.
 */
public final class Graph {

  private static final int NO_STEP = -1;

  private final int[][] targets;
  private final int[] arrivals;
  private final boolean[] reached;
  private final boolean whole;

  private Graph(int[][] targets, int[] arrivals, boolean[] reached, boolean whole) {
    this.targets = targets;
    this.arrivals = arrivals;
    this.reached = reached;
    this.whole = whole;
  }

  public static Graph of(Tree tree) {
    List<Step> steps = tree.steps();
    int[][] targets = new int[steps.size()][];
    int[] arrivals = new int[steps.size()];
    boolean whole = true;
    for (int step = 0; step < targets.length; step++) {
      List<Way> ways = steps.get(step).ways();
      targets[step] = new int[ways.size()];
      whole &= isWhole(steps.get(step));
      for (int way = 0; way < targets[step].length; way++) {
        Target target = ways.get(way).target();
        int toStep = target instanceof Target.ToStep to ? to.step() : NO_STEP;
        targets[step][way] = toStep;
        whole &= !(target instanceof Target.Nowhere);
        if (toStep != NO_STEP) {
          arrivals[toStep]++;
        }
      }
    }
    boolean[] reached = new boolean[targets.length];
    if (reached.length > 0) {
      mark(0, targets, reached);
    }
    return new Graph(targets, arrivals, reached, whole);
  }

  /** Whether everything written as a way on was read as one. */
  private static boolean isWhole(Step step) {
    Section section = step.header().section();
    boolean kept = section.ways().size() <= Step.MOST_ANSWERS && !(step.isLast() && !section.ways().isEmpty());
    return kept && section.unread().isEmpty();
  }

  public int size() {
    return targets.length;
  }

  /** The target of each way of a step, in order; negative if it is not a step of this tree. */
  public int[] targets(int step) {
    return targets[step];
  }

  /** The number of ways that lead to a step. */
  public int arrivals(int step) {
    return arrivals[step];
  }

  /** Whether some path from the first step reaches a step. */
  public boolean isReached(int step) {
    return reached[step];
  }

  /** Whether every way on has a target; if not, more steps may be meant to be reachable. */
  public boolean isWhole() {
    return whole;
  }

  /** Marks every step reachable from one, itself included. */
  public void mark(int from, boolean[] seen) {
    mark(from, targets, seen);
  }

  private static void mark(int from, int[][] targets, boolean[] seen) {
    int[] waiting = new int[16];
    int count = 0;
    seen[from] = true;
    waiting[count++] = from;
    while (count > 0) {
      for (int target : targets[waiting[--count]]) {
        if (target != NO_STEP && !seen[target]) {
          seen[target] = true;
          waiting = count == waiting.length ? Arrays.copyOf(waiting, 2 * count) : waiting;
          waiting[count++] = target;
        }
      }
    }
  }
}
