package rungbook.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
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
 * What a meter shows in any circuit state, for the healthy system and every single fault, on every sample.
 *
 * <p>Each configuration of relays is solved once for all samples; a fault is then a change of low rank. Where a fault
 * moves a relay, the configuration it moves to is solved (once, for all faults that end there).
 */
public final class Dictionary {

  private final CircuitModel plant;
  private final List<FaultCase> cases = new ArrayList<>();
  private final boolean[][][] blown;

  private Dictionary(CircuitModel plant) {
    this.plant = plant;
    cases.add(FaultCase.HEALTHY);
    plant.wiring().system().faults().forEach(fault -> cases.add(FaultCase.of(fault, plant.wiring())));
    blown = cases.stream().map(this::blownBefore).toArray(boolean[][][]::new);
  }

  /** @param system one that was read without problems */
  public static Dictionary of(ControlSystem system, Samples samples) {
    return new Dictionary(new CircuitModel(CircuitNetwork.of(system), samples));
  }

  public CircuitNetwork wiring() {
    return plant.wiring();
  }

  public int samples() {
    return plant.sampled().size();
  }

  /** The key of each case: {@code healthy}, then the faults in the system's order. */
  public List<String> cases() {
    return cases.stream().map(FaultCase::name).toList();
  }

  /** Solves one circuit state for every case and sample. */
  public ReadingTable sheet(CircuitState state, List<Probe> probes) {
    var sheet = new ReadingTable(probes, plant.logic().sights(), cases.size(), samples());
    try (var run = new StateSolver(plant, state)) {
      for (int i = 0; i < cases.size(); i++) {
        Cancellation.check();
        try (var settling = new SteadyStateSearch(run, cases.get(i))) {
          fill(sheet, i, run, settling);
        }
      }
    }
    return sheet;
  }

  private void fill(ReadingTable sheet, int number, StateSolver run, SteadyStateSearch settling) {
    double[] shown = new double[samples()];
    for (SteadyState settled : settling.from(blownNow(number, run.state()))) {
      var display = settled.steady() ? new MeterReadout(run, settling, settled.modes()) : null;
      for (int p = 0; p < sheet.probes().size(); p++) {
        if (settled.steady()) {
          display.read(sheet.probes().get(p), shown);
        } else {
          Arrays.fill(shown, Reading.UNSTEADY);
        }
        sheet.write(number, p, settled.samples(), shown);
      }
      note(sheet, number, settled, run.state());
    }
  }

  private void note(ReadingTable sheet, int number, SteadyState settled, CircuitState state) {
    var seen = new BitSet();
    List<String> sights = plant.logic().sights();
    for (int i = 0; i < sights.size(); i++) {
      seen.set(i, plant.logic().seen(sights.get(i), settled.standing(), state));
    }
    for (int sample : settled.samples()) {
      sheet.write(number, sample, seen);
    }
  }

  /**
   * The fuses that a fault has opened before anybody came: the house has called for everything by then, one call
   * after the other, and once a fuse is open in every sample there is nothing left to call for.
   *
   * @return for each sample and fuse
   */
  private boolean[][] blownBefore(FaultCase fault) {
    boolean[][] before = SteadyStateSearch.noneBlown(plant);
    if (!fault.mayBlowFuses()) {
      return before;
    }
    var words = plant.wiring().system().vocabulary();
    for (CircuitState state : CircuitState.start(words).everyPosition(words)) {
      Cancellation.check();
      call(state, fault, before);
      if (Arrays.stream(before).allMatch(Dictionary::any)) {
        break;
      }
    }
    return before;
  }

  private void call(CircuitState state, FaultCase fault, boolean[][] blown) {
    try (var run = new StateSolver(plant, state); var settling = new SteadyStateSearch(run, fault)) {
      for (SteadyState settled : settling.from(blown)) {
        for (int sample : settled.samples()) {
          or(blown[sample], settled.standing().blown);
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

  /** A new fuse is whole until this state opens it. */
  private boolean[][] blownNow(int number, CircuitState state) {
    var fuses = plant.logic().fuses();
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

  CircuitModel plant() {
    return plant;
  }

  List<FaultCase> caseList() {
    return cases;
  }

  boolean[][] blown(int number, CircuitState state) {
    return blownNow(number, state);
  }
}
