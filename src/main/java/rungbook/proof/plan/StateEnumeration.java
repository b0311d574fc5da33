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

  /**
   * Tasks on many crossing ways can double the states at every turn.
   *
   * @param order as {@link TopologicalOrder} gives it
   * @param mostStates how many states may be solved
   * @return empty if there are too many states to walk or to solve
   */
  public static Optional<StateEnumeration> of(List<Step> steps, int[] order, ProofContext course, int mostStates,
      int mostArrivals) {
    StateEnumeration plan = new StateEnumeration();
    plan.add(0, course.start().to(steps.get(0)));
    for (int step : order) {
      Cancellation.check();
      Set<Situation> here = plan.stands.remove(step);
      if (here == null || plan.count > mostArrivals || plan.solved.size() > mostStates) {
        return Optional.empty();
      }
      for (Situation stand : here) {
        plan.pass(steps, steps.get(step), stand, course.question());
      }
    }
    return Optional.of(plan);
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
