package rungbook.proof.plan;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Past;
import rungbook.tree.Action;
import rungbook.tree.Step;
import rungbook.tree.StepTimer;

/**
 * In which state each case is left by what people do. Where a seal-in contact, a lockout, a delay, a tripped switch or
 * a new fuse that has opened makes a difference, the state comes from the one before; where none does, it is as if
 * everything had been dropped out before, and cases that come by different ways go on together.
 */
public final class EquipmentMemory {

  private final Installations installations;
  private final boolean remembers;
  private final boolean hasDelays;
  private final Map<Left, CircuitState> known = new HashMap<>();

  /** A state without its past, and how the cases as which something reads are left in it. */
  private record Left(CircuitState state, Map<Integer, Integer> ways) {}

  EquipmentMemory(Installations installations) {
    this.installations = installations;
    this.remembers = installations.memory() != Installations.Memory.NOTHING;
    this.hasDelays = installations.memory() == Installations.Memory.DELAYS;
  }

  /** The situations in which cases are once a step's actions are done as they say, and which cases are in each. */
  public Map<Situation, BitSet> after(Situation situation, Step step, BitSet cases) {
    CircuitState to = waited(done(situation.state(), step), step);
    if (to.past().isEmpty() || to.equals(situation.state())) {
      return Map.of(new Situation(to, situation.place()), cases);
    }
    Map<Situation, BitSet> after = new LinkedHashMap<>();
    new TreeMap<>(installations.left(to, cases)).forEach((one, way) -> after
        .computeIfAbsent(new Situation(known(to, Map.of(one, way)), situation.place()), any -> new BitSet()).set(one));
    return after;
  }

  /**
   * The situation of something that reads as one case in some samples and as another in others.
   *
   * @param cases as which it reads
   */
  public Situation together(Situation situation, Step step, BitSet cases) {
    CircuitState to = waited(done(situation.state(), step), step);
    return new Situation(to.equals(situation.state()) ? to : known(to, cases), situation.place());
  }

  public Situation after(Situation situation, Step step, int caseNumber) {
    return together(situation, step, only(caseNumber));
  }

  /**
   * The situation after a step that may take faults away. What tripped or was locked out stays so without the fault.
   *
   * @param caseNumber before anything is repaired
   * @param reads as which case it reads once so many actions of the step are done
   */
  public Situation repaired(Situation situation, Step step, int caseNumber, IntUnaryOperator reads) {
    CircuitState now = situation.state();
    for (int i = 0; i < step.actions().size(); i++) {
      Action action = step.actions().get(i);
      int before = reads.applyAsInt(i);
      int after = reads.applyAsInt(i + 1);
      if (before == after) {
        now = done(now, action, after == caseNumber ? renewed(action) : repaired(action));
      } else {
        now = now.after(action.changes()).with(new Past(now, repaired(action), 0,
            Optional.of(installations.cases().get(before))));
      }
    }
    CircuitState to = waited(now, step);
    BitSet as = only(reads.applyAsInt(step.actions().size()));
    return new Situation(to.equals(situation.state()) ? to : known(to, as), situation.place());
  }

  private static BitSet only(int caseNumber) {
    var one = new BitSet();
    one.set(caseNumber);
    return one;
  }

  /** How the equipment is at last once it has gone from one state to another, where all cases are alike. */
  CircuitState after(CircuitState from, CircuitState to, BitSet cases) {
    return !remembers || from.equals(to) ? to
        : known(to.afterDelays(from, Set.of()), cases);
  }

  /** The state once every delay has run out; the same one where none runs. */
  public CircuitState afterDelays(CircuitState state, int caseNumber) {
    if (!hasDelays || state.past().isEmpty()) {
      return state;
    }
    CircuitState over = state.waited(Past.LONG);
    return installations.left(state, only(caseNumber)).equals(installations.left(over, only(caseNumber))) ? state
        : known(over, only(caseNumber));
  }

  /** One action after the other; what moves nothing leaves the state as it is. */
  private CircuitState done(CircuitState state, Step step) {
    CircuitState now = state;
    for (Action action : step.actions()) {
      now = done(now, action, renewed(action));
    }
    return now;
  }

  private CircuitState done(CircuitState now, Action action, Set<String> renewed) {
    CircuitState to = now.after(action.changes());
    if (to.equals(now.alone()) && renewed.isEmpty()) {
      return now;
    }
    return remembers || now.past().isPresent() || !to.replaced().isEmpty() ? to.from(now, renewed) : to;
  }

  /** Where everything was dropped out before, no delay runs. */
  private CircuitState waited(CircuitState state, Step step) {
    return step.timer().filter(timer -> hasDelays && timer.kind() == StepTimer.Kind.WAIT && state.past().isPresent())
        .map(timer -> state.waited(timer.seconds())).orElse(state);
  }

  private static Set<String> renewed(Action action) {
    var renewed = new HashSet<String>();
    action.changes().forEach(change -> {
      if (change instanceof StateChange.Begin begin
          && (begin.condition() == EquipmentCondition.REPLACED || begin.condition() == EquipmentCondition.RESET)) {
        renewed.add(begin.key());
      }
    });
    return renewed;
  }

  /** What is repaired or switched on is closed as well. */
  private static Set<String> repaired(Action action) {
    Set<String> renewed = renewed(action);
    renewed.addAll(RepairState.NOTHING_DONE.after(action).renewed());
    return renewed;
  }

  private CircuitState known(CircuitState state, BitSet cases) {
    return state.past().isEmpty() ? state : known(state, installations.left(state, cases));
  }

  /** The state as which the first that came so was known. */
  private CircuitState known(CircuitState state, Map<Integer, Integer> ways) {
    return ways.values().stream().allMatch(way -> way == 0) ? state.alone()
        : known.computeIfAbsent(new Left(state.alone(), ways), any -> state);
  }
}
