package rungbook.proof.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.network.Cancellation;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

/** Finds a shortest way to a step in one situation, whatever is read on the way. */
public final class SituationPath {

  private final List<Step> steps;
  private final Situation start;

  public SituationPath(List<Step> steps, Situation start) {
    this.steps = steps;
    this.start = start;
  }

  /**
   * A step on the way.
   *
   * @param answer that led here from the one before
   */
  private record At(int step, Situation situation, @Nullable At before, String answer) {}

  public Optional<Witness.Path> to(int step, Situation situation) {
    Deque<At> waiting = new ArrayDeque<>(List.of(new At(0, start.to(steps.get(0)), null, "")));
    Set<Object> seen = new HashSet<>();
    while (!waiting.isEmpty()) {
      Cancellation.check();
      At at = waiting.poll();
      if (at.step() == step && at.situation().equals(situation.alone())) {
        return Optional.of(path(at));
      }
      if (seen.add(List.of(at.step(), at.situation()))) {
        follow(at, waiting);
      }
    }
    return Optional.empty();
  }

  private void follow(At at, Deque<At> waiting) {
    Situation after = at.situation().after(steps.get(at.step()));
    for (Way way : steps.get(at.step()).ways()) {
      if (way.target() instanceof Target.ToStep to) {
        waiting.add(new At(to.step(), after.to(steps.get(to.step())), at, way.written()));
      }
    }
  }

  private Witness.Path path(At end) {
    List<Witness.Stop> stops = new ArrayList<>();
    String answer = "";
    for (At at = end; at != null; at = at.before()) {
      Step step = steps.get(at.step());
      stops.add(0, new Witness.Stop(step.title(), step.source(), step.header().titleSpan(), answer));
      answer = at.answer();
    }
    return new Witness.Path(stops);
  }
}
