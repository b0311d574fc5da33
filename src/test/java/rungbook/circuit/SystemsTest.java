package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.CircuitModel;
import rungbook.circuit.sequence.EquipmentState;
import rungbook.circuit.sequence.IslandCases;
import rungbook.circuit.sequence.KnownLevels;
import rungbook.circuit.sequence.RelayLogic;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.circuit.solver.NetworkStructure;
import rungbook.system.Terminal;

/** What has to be true of each system that comes with the project. */
@Tag("slow")
class SystemsTest {

  static Stream<String> systems() {
    return Stream.of(Systems.IDS);
  }

  @ParameterizedTest
  @MethodSource("systems")
  void readsWithoutProblems(String id) {
    assertEquals(List.of(), Systems.readWithProblems(id).problems().stream().map(Systems::text).toList());
  }

  /** Enough for every part to fail in some way; a list beyond what one person can check against the trade is not. */
  @ParameterizedTest
  @MethodSource("systems")
  void hasThirtyToNinetyFaults(String id) {
    int faults = Systems.read(id).faults().size();
    assertTrue(faults >= 30 && faults <= 90, faults + " faults");
  }

  @ParameterizedTest
  @MethodSource("systems")
  void theHealthySystemSettlesAndBlowsNothingInEveryPositionAndCorner(String id) {
    CircuitNetwork network = CircuitNetwork.of(Systems.read(id));
    var model = new CircuitModel(network, new RelayLogic(network), Samples.corners());
    var words = network.system().vocabulary();
    int[] all = IntStream.range(0, model.parameters().size()).toArray();
    boolean[] intact = new boolean[model.logic().remembered().stayingOpen().size()];
    var starts = CircuitState.start(words).everyPosition(words).stream()
        .map(state -> new SteadyStateSearch.Start(0, FaultCase.HEALTHY, model.healthy(),
            EquipmentState.of(network, state), all,
            model.logic().dropped(intact, state, FaultCase.HEALTHY)))
        .toList();
    var solver = SteadyStateSearch.solver(model, NetworkStructure.of(network, List.of()));
    var known = new KnownLevels(model, new IslandCases(network));
    new SteadyStateSearch(model, solver, known, new BitSet(), (start, steady, solved) -> {
      assertTrue(steady.converged(), () -> start.state() + " does not settle");
      assertArrayEquals(intact, steady.relays().blown, () -> start.state().toString());
    }).run(starts);
  }

  /** A fault that shows nowhere could never be found. */
  @ParameterizedTest
  @MethodSource("systems")
  void everyFaultShowsSomewhere(String id) {
    var dictionary = Dictionary.of(Systems.read(id), new Samples(List.of(Draw.MIDDLE)));
    var words = dictionary.network().system().vocabulary();
    var hidden = new HashSet<>(dictionary.cases().subList(1, dictionary.cases().size()));
    for (CircuitState state : CircuitState.start(words).everyPosition(words)) {
      ReadingTable table = Whole.table(dictionary, state, probes(dictionary.network()));
      hidden.removeIf(fault -> shows(table, dictionary.cases().indexOf(fault)));
    }
    assertEquals(new HashSet<>(), hidden);
  }

  @ParameterizedTest
  @MethodSource("systems")
  void noFaultIsReportedAsHidden(String id) {
    assertEquals(List.of(), HiddenFaults.of(Systems.read(id)));
  }

  private static boolean shows(ReadingTable table, int number) {
    for (int p = 0; p < table.probes().size(); p++) {
      double healthy = table.reading(0, 0, p);
      if (Math.abs(table.reading(number, 0, p) - healthy) > 0.1 * Math.max(1, healthy)) {
        return true;
      }
    }
    return IntStream.range(0, table.sights().size())
        .anyMatch(sight -> table.seen(0, 0, sight) != table.seen(number, 0, sight));
  }

  private static List<Probe> probes(CircuitNetwork network) {
    var probes = new ArrayList<Probe>();
    network.system().vocabulary().points().forEach((key, point) -> point.locations().stream().sorted().forEach(
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

  /** 300 samples are two blocks, and each sample reads as it does alone, to the last bit. */
  @ParameterizedTest
  @MethodSource("systems")
  void aSampleReadsTheSameInAnyBlock(String id) {
    var system = Systems.read(id);
    Samples all = Samples.seeded(9, 300);
    var together = Dictionary.of(system, all);
    var state = CircuitState.start(system.vocabulary()).set("thermostat", "cooling");
    List<Probe> probes = probes(together.network());
    ReadingTable table = Whole.table(together, state, probes);
    for (int sample : new int[] {0, 149, 150, 299}) {
      ReadingTable alone = Whole.table(
          Dictionary.of(system, new Samples(List.of(all.draws().get(sample)))), state, probes);
      for (int number = 0; number < together.cases().size(); number++) {
        for (int p = 0; p < probes.size(); p++) {
          assertEquals(alone.reading(number, 0, p), table.reading(number, sample, p), 0.0,
              together.cases().get(number));
        }
      }
    }
  }

  private static double[] readings(String id, long seed) {
    var dictionary = Dictionary.of(Systems.read(id), Samples.seeded(seed, 4));
    var state = CircuitState.start(dictionary.network().system().vocabulary()).set("thermostat", "cooling");
    List<Probe> probes = probes(dictionary.network());
    ReadingTable table = Whole.table(dictionary, state, probes);
    return IntStream.range(0, dictionary.cases().size()).boxed()
        .flatMapToDouble(number -> IntStream.range(0, probes.size()).boxed()
            .flatMapToDouble(p -> IntStream.range(0, 4).mapToDouble(sample -> table.reading(number, sample, p))))
        .toArray();
  }
}
