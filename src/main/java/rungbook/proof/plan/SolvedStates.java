package rungbook.proof.plan;

import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.locks.ReentrantLock;
import rungbook.circuit.Probe;
import rungbook.circuit.ReadingTable;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.CircuitState;

/**
 * The states of one system that were asked for last. Of each, only the cases that somebody asks for are solved: most
 * faults are found before a tree comes to most of its states. Thread-safe.
 */
final class SolvedStates {

  /** More than the trees of a system meet, and bounded, since a server keeps them while people edit. */
  private static final int MOST_KEPT = 128;

  private final Solving dictionary;
  private final List<String> sights;
  private final int cases;
  private final int samples;
  private final ReentrantLock solving = new ReentrantLock(true);
  private final Map<Asked, SolvedState> states = new LinkedHashMap<>(16, 0.75f, true) {
    private static final long serialVersionUID = 1;

    @Override
    protected boolean removeEldestEntry(Map.Entry<Asked, SolvedState> eldest) {
      return size() > MOST_KEPT;
    }
  };
  private boolean isChanged;

  /** A state, and every probe that is asked for in it. */
  private record Asked(CircuitState state, Set<Probe> probes) {}

  /** Solves cases of a state, and adds them to its table. */
  @FunctionalInterface
  interface Solving {
    void solve(CircuitState state, BitSet cases, ReadingTable table);
  }

  /** @param solved the cases that the table has */
  record Solved(CircuitState state, BitSet solved, ReadingTable table) {}

  /** @param sights their keys */
  SolvedStates(Solving dictionary, List<String> sights, int cases, int samples) {
    this.dictionary = dictionary;
    this.sights = sights;
    this.cases = cases;
    this.samples = samples;
  }

  /** @param probes every probe that may be asked for */
  Installations.Observations in(CircuitState state, List<Probe> probes) {
    Cancellation.lock(solving);
    try {
      return states.computeIfAbsent(new Asked(state, Set.copyOf(probes)),
          asked -> new SolvedState(state, new BitSet(), empty(asked.probes().stream()
              .sorted(Comparator.comparing(Probe::toString)).toList())));
    } finally {
      solving.unlock();
    }
  }

  ReadingTable empty(List<Probe> probes) {
    return ReadingTable.empty(probes, sights, cases, samples);
  }

  /** Whether something was solved since the states were restored. */
  boolean isChanged() {
    return isChanged;
  }

  /** What is known, to be kept for later. */
  List<Solved> all() {
    return states.entrySet().stream()
        .map(one -> new Solved(one.getKey().state(), one.getValue().solved, one.getValue().table)).toList();
  }

  /** Takes over what was known earlier. */
  void restore(List<Solved> earlier) {
    earlier.forEach(one -> states.put(new Asked(one.state(), Set.copyOf(one.table().probes())),
        new SolvedState(one.state(), one.solved(), one.table())));
  }

  private final class SolvedState implements Installations.Observations {

    private final CircuitState state;
    private final ReadingTable table;
    private final BitSet solved;

    SolvedState(CircuitState state, BitSet solved, ReadingTable table) {
      this.state = state;
      this.solved = solved;
      this.table = table;
    }

    @Override
    public void expect(BitSet cases) {
      Cancellation.lock(solving);
      try {
        var missing = (BitSet) cases.clone();
        missing.andNot(solved);
        if (!missing.isEmpty()) {
          dictionary.solve(state, missing, table);
          solved.or(missing);
          isChanged = true;
        }
      } finally {
        solving.unlock();
      }
    }

    private void expect(int caseNumber) {
      var one = new BitSet();
      one.set(caseNumber);
      expect(one);
    }

    @Override
    public void readings(int caseNumber, Probe probe, double[] into) {
      expect(caseNumber);
      table.readings(caseNumber, table.probes().indexOf(probe), into);
    }

    @Override
    public void seen(int caseNumber, String sight, boolean[] into) {
      expect(caseNumber);
      table.seen(caseNumber, sight, into);
    }
  }
}
