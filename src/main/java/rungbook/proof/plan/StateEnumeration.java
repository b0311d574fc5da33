package rungbook.proof.plan;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungbook.circuit.Probe;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.CircuitState;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

/** Which leads may be asked for in which state, found by walking every way on without a reading. */
public final class StateEnumeration {

  private final Map<CircuitState, Set<Probe>> probes = new HashMap<>();
  private final Map<Integer, Set<Situation>> stands = new HashMap<>();
  private final Set<CircuitState> solved = new HashSet<>();
  private int count;

  private StateEnumeration() {}

  /** @param why there are too many states; empty where there are not */
  public record Attempt(Optional<StateEnumeration> states, String why) {}

  /**
   * Tasks on many crossing ways can double the states at every turn.
   *
   * @param order as {@link TopologicalOrder} gives it
   * @param mostStates how many states may be solved
   * @param mostArrivals how many pairs of a step and a state may be walked
   */
  public static Attempt of(List<Step> steps, int[] order, ProofContext course, int mostStates, int mostArrivals) {
    StateEnumeration plan = new StateEnumeration();
    plan.add(0, course.start().to(steps.get(0)));
    for (int step : order) {
      Cancellation.check();
      Set<Situation> here = Optional.ofNullable(plan.stands.remove(step)).orElse(Set.of());
      if (plan.count > mostArrivals) {
        return tooMany("its steps are reached in more than " + mostArrivals + " states of the equipment together");
      }
      for (Situation stand : here) {
        plan.pass(steps, steps.get(step), stand, course.question());
      }
    }
    return plan.solved.size() <= mostStates ? new Attempt(Optional.of(plan), "")
        : tooMany("its tasks bring the equipment into more states than the " + mostStates + " that can be solved");
  }

  private static Attempt tooMany(String why) {
    return new Attempt(Optional.empty(), why);
  }

  private void pass(List<Step> steps, Step step, Situation stand, ProbePlan question) {
    if (step instanceof Step.MeterCheck check) {
      question.probe(check, stand.place()).ifPresent(probe -> {
        Set<Probe> here = probes.computeIfAbsent(stand.state(), state -> new LinkedHashSet<>());
        here.add(probe);
        question.lowImpedance(probe).ifPresent(here::add);
        solved.add(stand.state());
      });
    } else if (step instanceof Step.SenseCheck check && question.shows(check)) {
      solved.add(stand.state());
    }
    Situation after = stand.after(step);
    for (Way way : step.ways()) {
      if (way.target() instanceof Target.ToStep to) {
        add(to.step(), after.to(steps.get(to.step())));
      }
    }
  }

  private void add(int step, Situation stand) {
    if (stands.computeIfAbsent(step, s -> new LinkedHashSet<>()).add(stand)) {
      count++;
    }
  }

  public List<Probe> probes(CircuitState state) {
    return List.copyOf(probes.getOrDefault(state, Set.of()));
  }
}
