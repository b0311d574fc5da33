package rungbook.rules.flow;

import java.util.List;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/**
 * After which ways on every path ends at {@code healthy: yes}, whatever is read or seen later. Tasks are done as they
 * are meant to be: each takes its first way on.
 */
public final class HealthyEnds {

  private final List<Step> steps;
  private final boolean[] other;

  private HealthyEnds(List<Step> steps) {
    this.steps = steps;
    this.other = new boolean[steps.size()];
  }

  public static HealthyEnds of(Tree tree) {
    HealthyEnds ends = new HealthyEnds(tree.steps());
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int step = ends.steps.size() - 1; step >= 0; step--) {
        if (!ends.other[step] && ends.leadsElsewhere(ends.steps.get(step))) {
          ends.other[step] = true;
          changed = true;
        }
      }
    }
    return ends;
  }

  public static boolean isHealthy(Step step) {
    return step instanceof Step.Finding finding && finding.healthy();
  }

  public boolean isCertain(Target target) {
    return target instanceof Target.ToStep to && !other[to.step()];
  }

  private boolean leadsElsewhere(Step step) {
    List<Way> ways = step instanceof Step.Task && !step.ways().isEmpty() ? step.ways().subList(0, 1) : step.ways();
    return ways.isEmpty() ? !isHealthy(step) : ways.stream().anyMatch(way -> !isCertain(way.target()));
  }
}
