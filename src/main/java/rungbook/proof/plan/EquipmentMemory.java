package rungbook.proof.plan;

import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rungbook.action.EquipmentCondition;
import rungbook.action.StateChange;
import rungbook.circuit.network.CircuitState;
import rungbook.tree.Action;
import rungbook.tree.Step;

/**
 * In which state each case is left by what people do. Where a seal-in contact, a lockout or a new fuse that has opened
 * makes a difference, the state comes from the one before; where none does, it is as if everything had been dropped out
 * before, and cases that come by different ways go on together.
 */
public final class EquipmentMemory {

  private final Installations installations;
  private final boolean remembers;
  private final Map<Left, CircuitState> known = new HashMap<>();

  /** A state without its past, and how the cases as which something reads are left in it. */
  private record Left(CircuitState state, Map<Integer, Integer> ways) {}

  EquipmentMemory(Installations installations) {
    this.installations = installations;
    this.remembers = installations.remembers();
  }

  /** The situations in which cases are once a step's actions are done as they say, and which cases are in each. */
  public Map<Situation, BitSet> after(Situation situation, Step step, BitSet cases) {
    CircuitState to = done(situation.state(), step);
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
    CircuitState to = done(situation.state(), step);
    return new Situation(to.equals(situation.state()) ? to : known(to, cases), situation.place());
  }

  public Situation after(Situation situation, Step step, int caseNumber) {
    var one = new BitSet();
    one.set(caseNumber);
    return together(situation, step, one);
  }

  /** How the equipment is once it has gone from one state to another, where all cases are alike. */
  CircuitState after(CircuitState from, CircuitState to, BitSet cases) {
    return !remembers || from.equals(to) ? to : known(to.from(from, Set.of()), cases);
  }

  /** One action after the other; what moves nothing leaves the state as it is. */
  private CircuitState done(CircuitState state, Step step) {
    CircuitState now = state;
    for (Action action : step.actions()) {
      Set<String> renewed = renewed(action);
      CircuitState to = now.after(action.changes());
      if (!to.equals(now.alone()) || !renewed.isEmpty()) {
        now = remembers || !to.replaced().isEmpty() ? to.from(now, renewed) : to;
      }
    }
    return now;
  }

  private static Set<String> renewed(Action action) {
    return action.changes().stream()
        .filter(change -> change instanceof StateChange.Begin begin
            && (begin.condition() == EquipmentCondition.REPLACED || begin.condition() == EquipmentCondition.RESET))
        .map(change -> ((StateChange.Begin) change).key()).collect(Collectors.toSet());
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
