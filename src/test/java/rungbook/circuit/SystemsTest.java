package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.StateSolver;
import rungbook.circuit.sequence.SteadyState;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.system.Terminal;

/** What has to be true of each system that comes with the project. */
class SystemsTest {

  static Stream<String> systems() {
    return Stream.of(Systems.IDS);
  }

  @ParameterizedTest
  @MethodSource("systems")
  void readsWithoutProblems(String id) {
    assertEquals(List.of(), Systems.readWithProblems(id).problems().stream().map(Systems::text).toList());
  }

  @ParameterizedTest
  @MethodSource("systems")
  void hasThirtyToSixtyFaults(String id) {
    int faults = Systems.read(id).faults().size();
    assertTrue(faults >= 30 && faults <= 60, faults + " faults");
  }

  @ParameterizedTest
  @MethodSource("systems")
  void theHealthySystemSettlesAndBlowsNothingInEveryPositionAndCorner(String id) {
    var dictionary = Dictionary.of(Systems.read(id), Samples.corners());
    var words = dictionary.wiring().system().vocabulary();
    for (CircuitState state : CircuitState.start(words).everyPosition(words)) {
      try (var run = new StateSolver(dictionary.plant(), state);
          var settling = new SteadyStateSearch(run, FaultCase.HEALTHY)) {
        for (SteadyState settled : settling.from(SteadyStateSearch.noneBlown(dictionary.plant()))) {
          assertTrue(settled.steady(), () -> state.positions() + " does not settle");
          for (boolean blown : settled.standing().blown) {
            assertFalse(blown, () -> state.positions().toString());
          }
        }
      }
    }
  }

  /** A fault that shows nowhere could never be found. */
  @ParameterizedTest
  @MethodSource("systems")
  void everyFaultShowsSomewhere(String id) {
    var dictionary = Dictionary.of(Systems.read(id), new Samples(List.of(Draw.MIDDLE)));
    var words = dictionary.wiring().system().vocabulary();
    var hidden = new HashSet<>(dictionary.cases().subList(1, dictionary.cases().size()));
    for (CircuitState state : CircuitState.start(words).everyPosition(words)) {
      ReadingTable sheet = dictionary.sheet(state, probes(dictionary.wiring()));
      hidden.removeIf(fault -> shows(sheet, dictionary.cases().indexOf(fault)));
    }
    assertEquals(new HashSet<>(), hidden);
  }

  private static boolean shows(ReadingTable sheet, int number) {
    for (int p = 0; p < sheet.probes().size(); p++) {
      double healthy = sheet.reading(0, 0, p);
      if (Math.abs(sheet.reading(number, 0, p) - healthy) > 0.1 * Math.max(1, healthy)) {
        return true;
      }
    }
    return sheet.sights().stream().anyMatch(sight -> sheet.seen(0, 0, sight) != sheet.seen(number, 0, sight));
  }

  private static List<Probe> probes(CircuitNetwork wiring) {
    var probes = new ArrayList<Probe>();
    wiring.system().vocabulary().points().forEach((key, point) -> point.locations().stream().sorted().forEach(
        place -> probes.add(Leads.with(MeterFunction.VOLTS, new Terminal(key, place), new Terminal("ground", place)))));
    return probes;
  }

  /** The same seed gives the same readings, to the last bit. */
  @ParameterizedTest
  @MethodSource("systems")
  void readingsAreAFunctionOfTheSeed(String id) {
    assertTrue(java.util.Arrays.equals(readings(id, 5), readings(id, 5)));
    assertFalse(java.util.Arrays.equals(readings(id, 5), readings(id, 6)));
  }

  private static double[] readings(String id, long seed) {
    var dictionary = Dictionary.of(Systems.read(id), Samples.seeded(seed, 4));
    var state = CircuitState.start(dictionary.wiring().system().vocabulary()).set("thermostat", "cooling");
    return dictionary.sheet(state, probes(dictionary.wiring())).raw();
  }
}
