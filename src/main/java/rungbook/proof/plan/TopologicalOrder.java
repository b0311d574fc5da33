package rungbook.proof.plan;

import java.util.List;
import java.util.Optional;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

/** The steps that can be reached from the first, each after all that lead to it. */
public final class TopologicalOrder {

  private final List<Step> steps;
  private final int[] arrivals;

  private TopologicalOrder(List<Step> steps) {
    this.steps = steps;
    this.arrivals = new int[steps.size()];
  }

  /** Empty if the ways on go in a circle or there is no step. */
  public static Optional<int[]> of(List<Step> steps) {
    return steps.isEmpty() ? Optional.empty() : new TopologicalOrder(steps).sort();
  }

  private Optional<int[]> sort() {
    int reached = countArrivals();
    int[] order = new int[reached];
    int count = 1; // the first step is order[0]; something that leads back to it is a circle
    for (int next = 0; next < count && arrivals[0] == 0; next++) {
      for (Way way : steps.get(order[next]).ways()) {
        if (way.target() instanceof Target.ToStep to && --arrivals[to.step()] == 0) {
          order[count++] = to.step();
        }
      }
    }
    return count == reached && arrivals[0] == 0 ? Optional.of(order) : Optional.empty();
  }

  private int countArrivals() {
    boolean[] seen = new boolean[steps.size()];
    int[] waiting = new int[steps.size()];
    int count = 1;
    seen[0] = true;
    for (int next = 0; next < count; next++) {
      for (Way way : steps.get(waiting[next]).ways()) {
        if (way.target() instanceof Target.ToStep to) {
          arrivals[to.step()]++;
          if (!seen[to.step()]) {
            seen[to.step()] = true;
            waiting[count++] = to.step();
          }
        }
      }
    }
    return count;
  }
}
