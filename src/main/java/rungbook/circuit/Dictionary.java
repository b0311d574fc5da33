package rungbook.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.CircuitModel;
import rungbook.circuit.sequence.StateSolver;
import rungbook.circuit.sequence.SteadyState;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.system.ControlSystem;

/**
 * Fault dictionary: what a meter shows in any circuit state, for the healthy system and every single fault, on every
 * sample.
 *
 * <p>Each relay state is solved once for all samples, and each fault is a low-rank update of that solution. If a fault
 * changes the relay state, the new state is solved once and shared by all faults that reach it.
 */
public final class Dictionary {

  private final CircuitModel model;
  private final List<FaultCase> cases = new ArrayList<>();
  private final boolean[][][] blown;

  private Dictionary(CircuitModel model) {
    this.model = model;
    cases.add(FaultCase.HEALTHY);
    model.network().system().faults().forEach(fault -> cases.add(FaultCase.of(fault, model.network())));
    blown = cases.stream().map(this::blownBefore).toArray(boolean[][][]::new);
  }

  /**
   * Builds the dictionary.
   *
   * @param system a system that was read without problems
   */
  public static Dictionary of(ControlSystem system, Samples samples) {
    return new Dictionary(new CircuitModel(CircuitNetwork.of(system), samples));
  }

  public CircuitNetwork network() {
    return model.network();
  }

  public int samples() {
    return model.parameters().size();
  }

  /** The key of each case: {@code healthy}, then the faults in the system's order. */
  public List<String> cases() {
    return cases.stream().map(FaultCase::name).toList();
  }

  /** Solves one circuit state for every case and sample. */
  public ReadingTable table(CircuitState state, List<Probe> probes) {
    var all = new BitSet();
    all.set(0, cases.size());
    return table(state, probes, all);
  }

  /** Solves one circuit state for the healthy system; the other cases' rows of the table hold no readings. */
  public ReadingTable healthy(CircuitState state, List<Probe> probes) {
    var healthy = new BitSet();
    healthy.set(0);
    return table(state, probes, healthy);
  }

  /** Solves one circuit state for some cases; the other cases' rows of the table hold no readings. */
  ReadingTable table(CircuitState state, List<Probe> probes, BitSet wanted) {
    var table = new ReadingTable(probes, model.logic().sights(), cases.size(), samples());
    try (var solver = new StateSolver(model, state)) {
      for (int i = wanted.nextSetBit(0); i >= 0; i = wanted.nextSetBit(i + 1)) {
        Cancellation.check();
        try (var search = new SteadyStateSearch(solver, cases.get(i))) {
          recordReadings(table, i, solver, search);
        }
      }
    }
    return table;
  }

  private void recordReadings(ReadingTable table, int number, StateSolver solver, SteadyStateSearch search) {
    for (SteadyState steadyState : search.from(blownNow(number, solver.state()))) {
      if (steadyState.converged()) {
        recordConverged(table, number, steadyState, new MeterReadout(solver, search, steadyState.modes()));
      } else {
        recordUnsteady(table, number, steadyState);
      }
      recordSights(table, number, steadyState, solver.state());
    }
  }

  private void recordConverged(ReadingTable table, int number, SteadyState steadyState, MeterReadout readout) {
    double[] shown = new double[samples()];
    for (int p = 0; p < table.probes().size(); p++) {
      readout.read(table.probes().get(p), shown);
      table.write(number, p, steadyState.samples(), shown);
    }
  }

  private void recordUnsteady(ReadingTable table, int number, SteadyState steadyState) {
    double[] shown = new double[samples()];
    Arrays.fill(shown, Reading.UNSTEADY);
    for (int p = 0; p < table.probes().size(); p++) {
      table.write(number, p, steadyState.samples(), shown);
    }
  }

  private void recordSights(ReadingTable table, int number, SteadyState steadyState, CircuitState state) {
    var seen = new BitSet();
    for (int i = 0; i < model.logic().sights().size(); i++) {
      seen.set(i, model.logic().seen(i, steadyState.relays(), state));
    }
    for (int sample : steadyState.samples()) {
      table.write(number, sample, seen);
    }
  }

  /**
   * Finds the fuses that a fault has blown before the technician arrives. Assumes that every thermostat call has been
   * made once since the fault; stops when every sample has a blown fuse.
   *
   * @return [sample][fuse], true if blown
   */
  private boolean[][] blownBefore(FaultCase fault) {
    boolean[][] before = SteadyStateSearch.noneBlown(model);
    if (!fault.mayBlowFuses()) {
      return before;
    }
    var words = model.network().system().vocabulary();
    for (CircuitState state : CircuitState.start(words).everyPosition(words)) {
      Cancellation.check();
      solveState(state, fault, before);
      if (Arrays.stream(before).allMatch(Dictionary::any)) {
        break;
      }
    }
    return before;
  }

  private void solveState(CircuitState state, FaultCase fault, boolean[][] blown) {
    try (var solver = new StateSolver(model, state); var search = new SteadyStateSearch(solver, fault)) {
      for (SteadyState steadyState : search.from(blown)) {
        for (int sample : steadyState.samples()) {
          or(blown[sample], steadyState.relays().blown);
        }
      }
    }
  }

  private static boolean any(boolean[] fuses) {
    for (boolean fuse : fuses) {
      if (fuse) {
        return true;
      }
    }
    return false;
  }

  private static void or(boolean[] into, boolean[] from) {
    for (int i = 0; i < into.length; i++) {
      into[i] |= from[i];
    }
  }

  /** The fuses that are blown when a state begins, [sample][fuse]; a replaced fuse starts intact. */
  private boolean[][] blownNow(int number, CircuitState state) {
    var fuses = model.logic().fuses();
    if (fuses.stream().noneMatch(fuse -> state.replaced().contains(fuse.key()))) {
      return blown[number];
    }
    boolean[][] now = new boolean[samples()][];
    for (int s = 0; s < now.length; s++) {
      now[s] = blown[number][s].clone();
      for (int f = 0; f < now[s].length; f++) {
        now[s][f] &= !state.replaced().contains(fuses.get(f).key());
      }
    }
    return now;
  }

  /** The keys of the fuses and breakers that a case has opened before the technician arrives, in one sample. */
  public Set<String> opened(int caseNumber, int sample) {
    var fuses = model.logic().fuses();
    return IntStream.range(0, fuses.size()).filter(fuse -> blown[caseNumber][sample][fuse])
        .mapToObj(fuse -> fuses.get(fuse).key()).collect(Collectors.toSet());
  }

  CircuitModel model() {
    return model;
  }

  List<FaultCase> caseList() {
    return cases;
  }

  boolean[][] blown(int number, CircuitState state) {
    return blownNow(number, state);
  }
}
