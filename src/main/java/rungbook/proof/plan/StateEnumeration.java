package rungbook.proof.plan;

import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import rungbook.action.EquipmentCondition;
import rungbook.circuit.Probe;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.CircuitState;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

/** Which leads may be asked for in which state, found by following every way on without a reading. */
public final class StateEnumeration {

  private final Map<CircuitState, Set<Probe>> probes = new HashMap<>();
  private final Map<Integer, Set<Measurement>> measurements = new HashMap<>();
  private final Map<Integer, Set<Situation>> situations = new HashMap<>();
  private final Map<Integer, Set<Situation>> deadProofs = new TreeMap<>();
  private final Set<CircuitState> solved = new HashSet<>();
  private final Following following;
  private int count;

  private StateEnumeration(Following following) {
    this.following = following;
  }

  /** The situations in which a step can leave the equipment. */
  @FunctionalInterface
  private interface Following {
    Collection<Situation> after(Situation situation, Step step);
  }

  /** The equipment's state, and where the meter goes. */
  public record Measurement(CircuitState state, Probe probe) {}

  /** @param why there are too many states; empty where there are not */
  public record Attempt(Optional<StateEnumeration> states, String why) {}

  /**
   * Tasks on many crossing ways can double the states at every turn.
   *
   * @param order as {@link TopologicalOrder} gives it
   * @param mostStates how many states may be solved
   * @param mostArrivals how many pairs of a step and a state may be reached
   */
  public static Attempt of(List<Step> steps, int[] order, ProofContext context, int mostStates, int mostArrivals) {
    return of(steps, order, context, new Beginning(0, Set.of(context.start())), mostStates, mostArrivals);
  }

  /**
   * Where the work begins in a tree.
   *
   * @param situations in which somebody comes to the step
   */
  public record Beginning(int step, Set<Situation> situations) {}

  /** The same for work that begins somewhere else, or in several situations. */
  public static Attempt of(List<Step> steps, int[] order, ProofContext context, Beginning begins, int mostStates,
      int mostArrivals) {
    return of(new StateEnumeration((situation, step) -> List.of(situation.after(step))), steps, order, context, begins,
        mostStates, mostArrivals);
  }

  /**
   * The same, where what a healthy system remembers makes states of their own. It solves the circuit. What only a fault
   * makes a system remember, such as a lockout, the same fault does in the state by itself as well.
   */
  public static Attempt remembered(List<Step> steps, int[] order, ProofContext context, int mostStates,
      int mostArrivals) {
    var healthy = new BitSet();
    healthy.set(0);
    return of(new StateEnumeration((situation, step) -> context.memory().after(situation, step, healthy).keySet()),
        steps, order, context, new Beginning(0, Set.of(context.start())), mostStates, mostArrivals);
  }

  private static Attempt of(StateEnumeration plan, List<Step> steps, int[] order, ProofContext context,
      Beginning begins, int mostStates, int mostArrivals) {
    begins.situations().forEach(start -> plan.add(begins.step(), start.alone().to(steps.get(begins.step()))));
    for (int step : order) {
      Cancellation.check();
      Set<Situation> here = Optional.ofNullable(plan.situations.remove(step)).orElse(Set.of());
      if (plan.count > mostArrivals) {
        return tooMany("its steps are reached in more than " + mostArrivals + " states of the equipment together");
      }
      for (Situation situation : here) {
        plan.visit(steps, step, situation, context.probePlan());
      }
    }
    return plan.solved.size() <= mostStates ? new Attempt(Optional.of(plan), "")
        : tooMany("its tasks bring the equipment into more states than the " + mostStates + " that can be solved");
  }

  private static Attempt tooMany(String why) {
    return new Attempt(Optional.empty(), why);
  }

  private void visit(List<Step> steps, int number, Situation situation, ProbePlan probePlan) {
    Step step = steps.get(number);
    if (step instanceof Step.MeterCheck check) {
      probePlan.probe(check, situation.place()).ifPresent(probe -> {
        Set<Probe> here = probes.computeIfAbsent(situation.state(), state -> new LinkedHashSet<>());
        here.add(probe);
        measurements.computeIfAbsent(number, n -> new LinkedHashSet<>()).add(new Measurement(situation.state(), probe));
        probePlan.lowImpedance(probe).ifPresent(here::add);
        solved.add(situation.state());
      });
    } else if (step instanceof Step.SenseCheck check && probePlan.shows(check)) {
      solved.add(situation.state());
    }
    if (step.actions().stream().anyMatch(action -> action.kind().begins(EquipmentCondition.PROVED_DEAD))) {
      deadProofs.computeIfAbsent(number, at -> new LinkedHashSet<>()).add(situation);
    }
    Collection<Situation> after = following.after(situation, step);
    for (Way way : step.ways()) {
      if (way.target() instanceof Target.ToStep to) {
        after.forEach(one -> add(to.step(), one.to(steps.get(to.step()))));
      }
    }
  }

  private void add(int step, Situation situation) {
    if (situations.computeIfAbsent(step, s -> new LinkedHashSet<>()).add(situation)) {
      count++;
    }
  }

  /** What each check measures, in every state in which some path reaches it; by the step's number. */
  public Map<Integer, Set<Measurement>> measurements() {
    return measurements;
  }

  /** By step, the situations in which something is proved dead there. */
  public Map<Integer, Set<Situation>> deadProofs() {
    return Collections.unmodifiableMap(deadProofs);
  }

  /** Whether something is read or looked at in a state. */
  public boolean isRead(CircuitState state) {
    return solved.contains(state);
  }

  public List<Probe> probes(CircuitState state) {
    return List.copyOf(probes.getOrDefault(state, Set.of()));
  }
}
