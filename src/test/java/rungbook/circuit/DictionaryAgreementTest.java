package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.FaultCase;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.StateSolver;
import rungbook.circuit.sequence.SteadyState;
import rungbook.circuit.sequence.SteadyStateSearch;
import rungbook.circuit.solver.LowRankNetwork;
import rungbook.circuit.solver.Network;
import rungbook.system.Terminal;

/**
 * A seeded Monte Carlo that solves every sample in full by the general solver and by elimination, beside the
 * dictionary.
 */
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

  @ParameterizedTest
  @MethodSource("systems")
  void lowRankReadingsAreThoseOfFullSolves(String id) {
    Samples samples = Samples.seeded(42, SAMPLES);
    var dictionary = Dictionary.of(Systems.read(id), samples);
    var words = dictionary.network().system().vocabulary();
    int lowRank = 0;
    int converged = 0;
    for (CircuitState state : CircuitState.start(words).everyPosition(words)) {
      ReadingTable table = dictionary.table(state, probes(dictionary.network(), new Random(7)));
      var solver = new StateSolver(dictionary.model(), state);
      for (int i = 0; i < dictionary.cases().size(); i++) {
        var search = new SteadyStateSearch(solver, dictionary.caseList().get(i));
        for (SteadyState steadyState : search.from(dictionary.blown(i, state))) {
          if (steadyState.converged()) {
            converged++;
            lowRank += search.network(steadyState.modes()) instanceof LowRankNetwork ? 1 : 0;
            assertSame(table, i, steadyState, solver, search);
          }
        }
      }
    }
    assertTrue(lowRank * 4 > converged, lowRank + " of " + converged + " by low rank");
  }

  private static void assertSame(ReadingTable table, int number, SteadyState steadyState, StateSolver solver,
      SteadyStateSearch search) {
    FaultCase fault = search.fault();
    Network full = solver.solveInFull(steadyState.modes(), fault, search.faulted());
    double[][] seen = new double[2][SAMPLES];
    for (int p = 0; p < table.probes().size(); p++) {
      Probe probe = table.probes().get(p);
      int red = solver.model().network().node(probe.red()).orElseThrow();
      int black = solver.model().network().node(probe.black()).orElseThrow();
      if (!full.connected(red, black)) {
        continue;
      }
      full.impedanceBetween(red, black, seen[0], seen[1]);
      for (int s : steadyState.samples()) {
        Phasor open = new Phasor(full.volts().re[red][s] - full.volts().re[black][s],
            full.volts().im[red][s] - full.volts().im[black][s]);
        Phasor y = probe.meter().admittance(60);
        double expected = open.over(y.times(new Phasor(seen[0][s], seen[1][s])).plus(Phasor.ONE)).magnitude();
        assertEquals(expected, table.reading(number, s, p), WITHIN * SOURCE_VOLTS, () -> fault.name() + " " + probe);
      }
    }
  }

  /**
   * The general solver has another matrix, another pivot order and other rounding: it agrees as far as its digits go.
   */
  @ParameterizedTest
  @MethodSource("systems")
  void theGeneralSolverAgrees(String id) {
    Samples samples = Samples.seeded(43, 1);
    var dictionary = Dictionary.of(Systems.read(id), samples);
    CircuitState state = CircuitState.start(dictionary.network().system().vocabulary()).set("thermostat", "cooling");
    var solver = new StateSolver(dictionary.model(), state);
    for (int i = 0; i < dictionary.cases().size(); i++) {
      Settle.Result result = Settle.of(dictionary, solver, state, i, samples.draws().get(0));
      Solution solution = Solver.solve(result.netlist());
      ComplexRows volts = result.full().volts();
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
