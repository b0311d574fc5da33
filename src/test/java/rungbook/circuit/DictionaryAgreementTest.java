package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.Samples;
import rungbook.circuit.solver.SolvedNetwork;
import rungbook.library.ShortRun;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Terminal;

/**
 * A seeded Monte Carlo that solves every sample in full by the general solver and by elimination, beside the
 * dictionary.
 */
@Tag("slow")
class DictionaryAgreementTest {

  /**
   * Of the source. The voltage to ground of a secondary that only leakage ties down comes out of a balance between
   * 240 V and some ten nanosiemens, which double precision holds to about 1e-7 V either way.
   */
  private static final double WITHIN = 2e-9;

  private static final double SOURCE_VOLTS = 240;

  private static final int SAMPLES = 12;

  static Stream<String> systems() {
    return Stream.of(Systems.IDS);
  }

  /**
   * Two samples of each case by themselves, in a structure of its own, beside what the blocks take over from each
   * other. With {@code -Drungbook.short=true} one sample, and each fault in enough states to meet every position of
   * every control.
   */
  @ParameterizedTest
  @MethodSource("systems")
  void readingsAreThoseOfFullSolves(String id) {
    Samples samples = Samples.seeded(42, SAMPLES);
    var system = Systems.read(id);
    var dictionary = Dictionary.of(system, samples);
    var words = system.vocabulary();
    int compared = 0;
    List<CircuitState> states = CircuitState.start(words).everyPosition(words);
    List<Probe> probes = probes(dictionary.network(), new Random(7));
    Map<CircuitState, ReadingTable> tables = Whole
        .tables(dictionary, states.stream().collect(Collectors.toMap(state -> state, state -> probes)));
    for (int sample = 0; sample < SAMPLES; sample += ShortRun.IS ? SAMPLES : SAMPLES / 2) {
      Draw draw = samples.draws().get(sample);
      var single = Dictionary.of(system, new Samples(List.of(draw)));
      for (int i = 0; i < dictionary.cases().size(); i++) {
        for (CircuitState state : CoveringStates.of(i, states)) {
          compared += assertSame(tables.get(state), i, sample, Settle.of(single, state, i, draw), single.network());
        }
      }
    }
    assertTrue(compared > (ShortRun.IS ? 2_000 : 10_000), compared + " compared");
  }

  /** The same for pairs of faults at random, which no line of the system states. */
  @ParameterizedTest
  @MethodSource("systems")
  void readingsOfTwoFaultsAtOnceAreThoseOfFullSolves(String id) {
    Samples samples = Samples.seeded(45, SAMPLES);
    var system = Systems.read(id);
    List<List<Fault>> pairs = pairs(system, new Random(6), 40);
    var dictionary = Dictionary.of(system, samples, pairs);
    var words = system.vocabulary();
    List<CircuitState> states = CircuitState.start(words).everyPosition(words).stream().limit(6).toList();
    List<Probe> probes = probes(dictionary.network(), new Random(8));
    Map<CircuitState, ReadingTable> tables = Whole.tables(dictionary,
        states.stream().collect(Collectors.toMap(state -> state, state -> probes)));
    int compared = 0;
    Draw draw = samples.draws().get(SAMPLES - 1);
    var single = Dictionary.of(system, new Samples(List.of(draw)), pairs);
    for (CircuitState state : states) {
      for (int i = 0; i < dictionary.cases().size(); i++) {
        compared += assertSame(tables.get(state), i, SAMPLES - 1, Settle.of(single, state, i, draw), single.network());
      }
    }
    assertTrue(compared > 2_000, compared + " compared");
  }

  private static List<List<Fault>> pairs(ControlSystem system, Random random, int count) {
    return IntStream.range(0, count).mapToObj(i -> random.ints(0, system.faults().size()).distinct()
        .limit(2).mapToObj(system.faults()::get).toList()).toList();
  }

  private static int assertSame(ReadingTable table, int number, int sample, Settle.Result result,
      CircuitNetwork network) {
    if (!result.steadyState().converged()) {
      return 0;
    }
    SolvedNetwork full = result.network();
    double[][] seen = new double[2][1];
    int compared = 0;
    for (int p = 0; p < table.probes().size(); p++) {
      Probe probe = table.probes().get(p);
      int red = network.node(probe.red()).orElseThrow();
      int black = network.node(probe.black()).orElseThrow();
      if (full.connected(red, black)) {
        full.impedanceBetween(red, black, seen[0], seen[1]);
        Phasor open = new Phasor(full.volts().re[red][0] - full.volts().re[black][0],
            full.volts().im[red][0] - full.volts().im[black][0]);
        Phasor y = probe.meter().admittance(60);
        double expected = open.over(y.times(new Phasor(seen[0][0], seen[1][0])).plus(Phasor.ONE)).magnitude();
        assertEquals(expected, table.reading(number, sample, p), WITHIN * SOURCE_VOLTS,
            () -> result.name() + " " + probe);
        compared++;
      }
    }
    return compared;
  }

  /**
   * The general solver has another matrix, another pivot order and other rounding: it agrees as far as its digits go.
   */
  @ParameterizedTest
  @MethodSource("systems")
  void theGeneralSolverAgrees(String id) {
    Samples samples = Samples.seeded(43, 1);
    theGeneralSolverAgrees(Dictionary.of(Systems.read(id), samples), samples.draws().get(0));
  }

  /** Fifty pairs at random, of every kind of fault. */
  @ParameterizedTest
  @MethodSource("systems")
  void theGeneralSolverAgreesOnTwoFaultsAtOnce(String id) {
    Samples samples = Samples.seeded(44, 1);
    ControlSystem system = Systems.read(id);
    List<List<Fault>> pairs = pairs(system, new Random(5), 50);
    theGeneralSolverAgrees(Dictionary.of(system, samples, pairs), samples.draws().get(0));
  }

  private static void theGeneralSolverAgrees(Dictionary dictionary, Draw draw) {
    CircuitState state = CircuitState.start(dictionary.network().system().vocabulary()).set("thermostat", "cooling");
    for (int i = 0; i < dictionary.cases().size(); i++) {
      Settle.Result result = Settle.of(dictionary, state, i, draw);
      Solution solution = Solver.solve(result.netlist());
      ComplexRows volts = result.network().volts();
      for (String node : result.netlist().nodes()) {
        if (node.matches("\\d+") && !solution.floating(node)) {
          int n = Integer.parseInt(node);
          Phasor ours = new Phasor(volts.re[n][0], volts.im[n][0]);
          assertEquals(0, ours.minus(solution.volts(node)).magnitude(), 1e-5, result.name() + " node " + node);
        }
      }
    }
  }

  private static List<Probe> probes(CircuitNetwork network, Random random) {
    List<Terminal> terminals = network.system().vocabulary().points().entrySet().stream()
        .flatMap(
            point -> point.getValue().locations().stream().sorted().map(place -> new Terminal(point.getKey(), place)))
        .filter(terminal -> network.node(terminal).isPresent()).toList();
    var probes = new ArrayList<Probe>();
    for (int i = 0; i < 30; i++) {
      probes.add(Leads.with(i % 3 == 0 ? MeterFunction.VOLTS_LOW_IMPEDANCE : MeterFunction.VOLTS,
          terminals.get(random.nextInt(terminals.size())),
          terminals.get(random.nextInt(terminals.size()))));
    }
    return probes;
  }
}
