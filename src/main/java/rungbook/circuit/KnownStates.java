package rungbook.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.sequence.RelayState;
import rungbook.circuit.sequence.SteadyState;
import rungbook.circuit.sequence.SteadyStateSearch.Start;

/** How the cases of one block are left in the states that others come from. */
final class KnownStates {

  /** So many groups of samples are kept, some 20 MB; then they are found again. */
  private static final int MOST_KEPT = 100_000;

  private final Map<CircuitState, Map<Integer, Map<RelayState, int[]>>> left = new HashMap<>();
  private final Map<CircuitState, Set<Integer>> chattering = new HashMap<>();
  private int kept;

  /** What a search has found. Only whole searches are taken over: one may be given up halfway. */
  static final class Found {

    private final Map<CircuitState, Map<Integer, Map<RelayState, int[]>>> found = new HashMap<>();
    private final Map<CircuitState, Set<Integer>> chattering = new HashMap<>();

    /** Samples that are left alike are one group from here on. */
    void settled(Start start, SteadyState steady) {
      CircuitState state = start.state().state();
      if (!steady.converged()) {
        chattering.computeIfAbsent(state, any -> new HashSet<>()).add(start.number());
      }
      found.computeIfAbsent(state, any -> new HashMap<>())
          .computeIfAbsent(start.number(), any -> new LinkedHashMap<>())
          .merge(steady.relays(), steady.samples(),
              (some, more) -> IntStream.concat(Arrays.stream(some), Arrays.stream(more)).toArray());
    }
  }

  /** Some samples that are left alike. */
  record Left(RelayState relays, int[] samples) {}

  /** Whether a case is known to settle in a state: then it does not move from there. */
  boolean settles(CircuitState state, int caseNumber) {
    return has(state, caseNumber) && !chattering.getOrDefault(state, Set.of()).contains(caseNumber);
  }

  boolean has(CircuitState state, int caseNumber) {
    return left.getOrDefault(state, Map.of()).containsKey(caseNumber);
  }

  boolean hasAll(CircuitState state, BitSet cases) {
    return cases.stream().allMatch(one -> has(state, one));
  }

  void add(Found more) {
    more.found.forEach((state, cases) -> {
      left.computeIfAbsent(state, any -> new HashMap<>()).putAll(cases);
      kept += cases.values().stream().mapToInt(Map::size).sum();
    });
    more.chattering.forEach((state, cases) -> chattering.computeIfAbsent(state, any -> new HashSet<>()).addAll(cases));
  }

  /** Says that a case is left in one state as in another. */
  void copy(CircuitState from, CircuitState to, int caseNumber) {
    left.computeIfAbsent(to, any -> new HashMap<>()).put(caseNumber,
        left.getOrDefault(from, Map.of()).getOrDefault(caseNumber, Map.of()));
    if (chattering.getOrDefault(from, Set.of()).contains(caseNumber)) {
      chattering.computeIfAbsent(to, any -> new HashSet<>()).add(caseNumber);
    }
  }

  /** All samples of a case that was followed to a state. */
  List<Left> of(CircuitState state, int caseNumber) {
    var groups = new ArrayList<Left>();
    left.getOrDefault(state, Map.of()).getOrDefault(caseNumber, Map.of())
        .forEach((relays, samples) -> groups.add(new Left(relays, samples)));
    return groups;
  }

  /** To be called between two searches; says whether it has begun anew. */
  boolean forgetTooMany() {
    boolean isFull = kept > MOST_KEPT;
    if (isFull) {
      left.clear();
      chattering.clear();
      kept = 0;
    }
    return isFull;
  }
}
