package rungbook.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import rungbook.system.ControlSystem;

/**
 * What a meter shows in any circuit state, for the healthy system and every single fault, on every sample.
 *
 * <p>Each configuration of relays is solved once for all samples; a fault is then a change of low rank. Where a fault
 * moves a relay, the configuration it moves to is solved (once, for all faults that end there).
 */
public final class Dictionary {

  private final Plant plant;
  private final List<Case> cases = new ArrayList<>();
  private final boolean[][][] blown;

  private Dictionary(Plant plant) {
    this.plant = plant;
    cases.add(Case.HEALTHY);
    plant.wiring().system().faults().forEach(fault -> cases.add(Case.of(fault, plant.wiring())));
    blown = cases.stream().map(this::blownBefore).toArray(boolean[][][]::new);
  }

  /** @param system one that was read without problems */
  public static Dictionary of(ControlSystem system, Samples samples) {
    return new Dictionary(new Plant(Wiring.of(system), samples));
  }

  public Wiring wiring() {
    return plant.wiring();
  }

  public int samples() {
    return plant.sampled().size();
  }

  /** The key of each case: {@code healthy}, then the faults in the system's order. */
  public List<String> cases() {
    return cases.stream().map(Case::name).toList();
  }

  /** Solves one circuit state for every case and sample. */
  public Sheet sheet(CircuitState state, List<Probe> probes) {
    var sheet = new Sheet(probes, plant.logic().sights(), cases.size(), samples());
    try (var run = new Run(plant, state)) {
      for (int i = 0; i < cases.size(); i++) {
        Cancellation.check();
        try (var settling = new Settling(run, cases.get(i))) {
          fill(sheet, i, run, settling);
        }
      }
    }
    return sheet;
  }

  private void fill(Sheet sheet, int number, Run run, Settling settling) {
    double[] shown = new double[samples()];
    for (Settled settled : settling.from(blownNow(number, run.state()))) {
      var display = settled.steady() ? new Display(run, settling, settled.modes()) : null;
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

  private void note(Sheet sheet, int number, Settled settled, CircuitState state) {
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
  private boolean[][] blownBefore(Case fault) {
    boolean[][] before = Settling.noneBlown(plant);
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

  private void call(CircuitState state, Case fault, boolean[][] blown) {
    try (var run = new Run(plant, state); var settling = new Settling(run, fault)) {
      for (Settled settled : settling.from(blown)) {
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

  Plant plant() {
    return plant;
  }

  List<Case> caseList() {
    return cases;
  }

  boolean[][] blown(int number, CircuitState state) {
    return blownNow(number, state);
  }
}
