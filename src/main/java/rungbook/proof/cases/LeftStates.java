package rungbook.proof.cases;

import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.sequence.RelayState;

/**
 * Tells apart the ways in which a case can be left in one state of the equipment: with a seal-in contact closed or
 * open, locked out or not. Thread-safe.
 */
public final class LeftStates {

  /** Ways that are compared with later ones; then it begins anew, and fewer are found to be the same. */
  private static final int MOST_KEPT = 20_000;

  /** States that one state may come from to be kept for later. */
  private static final int MOST_BEFORE = 200;

  private final Following following;
  private final ReentrantLock working = new ReentrantLock(true);
  private final Map<CircuitState, Map<Integer, Integer>> known = new LinkedHashMap<>();
  private final Map<CircuitState, Map<Integer, Map<List<RelayState>, Integer>>> ways = new HashMap<>();
  private int kept;
  private int last;
  private boolean isChanged;

  /** Follows cases to a state. */
  @FunctionalInterface
  public interface Following {
    Map<Integer, List<RelayState>> left(CircuitState state, BitSet cases);
  }

  public LeftStates(Following following) {
    this.following = following;
  }

  /**
   * How cases are left in a state: 0 as if everything had been dropped out before, or else the number of another way.
   */
  public Map<Integer, Integer> of(CircuitState state, BitSet cases) {
    Cancellation.lock(working);
    try {
      if (known.size() > MOST_KEPT) {
        known.clear();
      }
      Map<Integer, Integer> numbers = known.computeIfAbsent(state, any -> new HashMap<>());
      var missing = (BitSet) cases.clone();
      numbers.keySet().forEach(missing::clear);
      if (!missing.isEmpty()) {
        number(state, missing, numbers);
      }
      var asked = new HashMap<Integer, Integer>();
      cases.stream().forEach(one -> asked.put(one, numbers.get(one)));
      return asked;
    } finally {
      working.unlock();
    }
  }

  private void number(CircuitState state, BitSet cases, Map<Integer, Integer> into) {
    isChanged = true;
    if (kept > MOST_KEPT) {
      ways.clear();
      kept = 0;
    }
    CircuitState alone = state.alone();
    Map<Integer, Map<List<RelayState>, Integer>> ofState = ways.computeIfAbsent(alone, any -> new HashMap<>());
    var first = (BitSet) cases.clone();
    ofState.keySet().forEach(first::clear);
    following.left(alone, first).forEach((one, left) -> ofState.put(one, new HashMap<>(Map.of(left, 0))));
    following.left(state, cases).forEach((one, left) -> into.put(one,
        ofState.computeIfAbsent(one, any -> new HashMap<>()).computeIfAbsent(left, any -> newWay())));
  }

  /** A number is given once, even if the way that it stands for is not kept. */
  private int newWay() {
    kept++;
    return ++last;
  }

  public boolean isChanged() {
    return isChanged;
  }

  /** The number of the way, by state, then by case. What only a long walk comes to is found anew. */
  public Map<CircuitState, Map<Integer, Integer>> all() {
    var all = new LinkedHashMap<>(known);
    all.keySet().removeIf(state -> state.andBefore().skip(MOST_BEFORE).findAny().isPresent());
    return all;
  }

  /** Takes over what was known earlier. */
  public void restore(Map<CircuitState, Map<Integer, Integer>> earlier) {
    known.putAll(earlier);
    last = earlier.values().stream().flatMap(numbers -> numbers.values().stream())
        .mapToInt(Integer::intValue).max().orElse(0);
  }
}
