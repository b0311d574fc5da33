package rungbook.proof.plan;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import rungbook.circuit.network.CircuitState;
import rungbook.tree.NameRef;
import rungbook.tree.Symptoms;

/**
 * The cases and installations that a tree is for: those that show its complaint. The healthy system is always one of
 * them, since customers complain about healthy systems too.
 */
public final class Population {

  private final boolean[][] shows;
  private final double[] shown;
  private final int[] cases;

  /**
   * @param shows by case, then by installation
   * @param shown by case: the share of the drawn installations that shows it
   */
  private Population(boolean[][] shows, double[] shown) {
    this.shows = shows;
    this.shown = shown;
    this.cases = IntStream.range(0, shown.length).filter(this::has).toArray();
  }

  /** Every installation of every case that has a likelihood. */
  static Population everything(Installations installations) {
    double[] all = new double[installations.cases().size()];
    Arrays.setAll(all, i -> installations.likelihood(i) > 0 ? 1 : 0);
    return new Population(new boolean[0][], all);
  }

  /** How many states {@link #statesOf} gives. */
  public static long stateCount(Symptoms symptoms) {
    return symptoms.call().stream().mapToLong(called -> called.positions().size())
        .reduce(1, (all, positions) -> all > Integer.MAX_VALUE ? all : all * positions);
  }

  /** The states in which the customer may complain: nothing is touched, and the controls are at the call. */
  static List<CircuitState> statesOf(Symptoms symptoms, CircuitState start) {
    List<CircuitState> states = List.of(start);
    for (Symptoms.Called called : symptoms.call()) {
      states = states.stream()
          .flatMap(state -> called.positions().stream().map(position -> state.set(called.control(), position)))
          .toList();
    }
    return states;
  }

  /** Those that show a complaint, found by what is seen alone; every case where the tree says no complaint. */
  public static Population of(Optional<Symptoms> symptoms, Installations installations, CircuitState start) {
    return symptoms.map(words -> of(words, installations,
        statesOf(words, start).stream().map(state -> installations.in(called(installations, start, state), List.of()))
            .toList()))
        .orElseGet(() -> everything(installations));
  }

  /** Where it matters, the call comes after what was before, and the customer waits. */
  private static CircuitState called(Installations installations, CircuitState start, CircuitState state) {
    return installations.memory() != Installations.Memory.NOTHING && !state.equals(start)
        ? state.afterDelays(start, Set.of()) : state;
  }

  /** @param observations in each state of the complaint */
  static Population of(Symptoms symptoms, Installations installations,
      List<Installations.Observations> observations) {
    boolean[][] shows = new boolean[installations.cases().size()][installations.samples()];
    double[] shown = new double[shows.length];
    var everyCase = new BitSet();
    everyCase.set(0, shows.length);
    observations.forEach(observed -> observed.expect(everyCase));
    for (int i = 0; i < shows.length; i++) {
      for (Installations.Observations observed : i > 0 && installations.likelihood(i) == 0
          ? List.<Installations.Observations>of() : observations) {
        or(shows[i], shows(symptoms, i, installations, observed));
      }
      for (int sample = 0; sample < installations.drawn(); sample++) {
        shown[i] += shows[i][sample] ? installations.weight(i, sample) / installations.drawn() : 0;
      }
    }
    return new Population(shows, shown);
  }

  private static boolean[] shows(Symptoms symptoms, int caseNumber, Installations installations,
      Installations.Observations observations) {
    var look = new Look(caseNumber, installations, observations);
    boolean[] shows = new boolean[installations.samples()];
    Arrays.fill(shows, true);
    look.at(symptoms.seen()).forEach(seen -> and(shows, seen, true));
    look.at(symptoms.notSeen()).forEach(seen -> and(shows, seen, false));
    List<boolean[]> notAll = look.at(symptoms.notAllSeen());
    if (!notAll.isEmpty()) {
      boolean[] every = new boolean[shows.length];
      Arrays.fill(every, true);
      notAll.forEach(seen -> and(every, seen, true));
      and(shows, every, false);
    }
    return shows;
  }

  private static void or(boolean[] shows, boolean[] too) {
    for (int sample = 0; sample < shows.length; sample++) {
      shows[sample] |= too[sample];
    }
  }

  private static void and(boolean[] shows, boolean[] seen, boolean wanted) {
    for (int sample = 0; sample < shows.length; sample++) {
      shows[sample] &= seen[sample] == wanted;
    }
  }

  private record Look(int caseNumber, Installations installations, Installations.Observations observations) {

    /** By sight, then by sample; a sight of which the system does not say when it is seen is left out. */
    List<boolean[]> at(List<NameRef> sights) {
      return sights.stream().filter(sight -> installations.shows(sight.key())).map(this::at).toList();
    }

    private boolean[] at(NameRef sight) {
      boolean[] bySample = new boolean[installations.samples()];
      observations.seen(caseNumber, sight.key(), bySample);
      return bySample;
    }
  }

  /** Whether a case shows the complaint in some drawn installation. */
  public boolean has(int caseNumber) {
    return caseNumber == 0 || shown[caseNumber] > 0;
  }

  /** Whether some fault shows the complaint. */
  public boolean hasFaults() {
    return cases.length > 1;
  }

  /** The cases that show the complaint, the healthy system first. */
  public int[] cases() {
    return cases.clone();
  }

  /** The share of a case's installations that shows the complaint. */
  public double shown(int caseNumber) {
    return shown[caseNumber];
  }

  /** By what an installation counts more among those that show the complaint; 0 where it does not show it. */
  double factor(int caseNumber, int sample) {
    if (caseNumber == 0 || shows.length == 0) {
      return 1;
    }
    return shows[caseNumber][sample] && shown[caseNumber] > 0 ? 1 / shown[caseNumber] : 0;
  }
}
