package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.ComplexRows;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Phasor;
import rungbook.circuit.network.Samples;
import rungbook.circuit.solver.SolvedNetwork;
import rungbook.library.ShortRun;

/**
 * Every state of the three systems, healthy and with every fault, against ngspice: 24 pairs of leads each without a
 * meter, one of them again with a meter of 10 MΩ and of 3 kΩ. With {@code -Drungbook.short=true} each fault is in
 * enough states to meet every position of every control, and not in every combination of them, with one of the meters.
 */
@Tag("slow")
class SpiceAgreementTest {

  private static final int PAIRS = 24;
  private static final double RELATIVE = 1e-6;
  private static final double LEAST_VOLTS = 1e-6;

  /** A node that only leakage ties to ground may be off in ngspice's double precision; then {@link Exact} decides. */
  private static final double FROM_EXACT = 2e-7;

  private static final double MOST_DECIDED = 0.03;

  private record Compared(String name, Netlist netlist, SolvedNetwork network, int copy, int[][] pairs,
      Optional<MeterFunction> meter) {}

  private int readings;
  private int decided;

  static Stream<String> systems() {
    return Stream.of(Systems.IDS);
  }

  @Test
  void ngspiceIsThere() throws Exception {
    var version = new ProcessBuilder("ngspice", "-v").redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
    assertEquals(0, version.waitFor(), "install the Debian package ngspice");
  }

  @ParameterizedTest
  @MethodSource("systems")
  void everyStateAndFaultAgrees(String id) throws Exception {
    Samples one = Samples.seeded(id.hashCode(), 1);
    var dictionary = Dictionary.of(Systems.read(id), one);
    var words = dictionary.network().system().vocabulary();
    List<CircuitState> states = CircuitState.start(words).everyPosition(words);
    List<List<CircuitState>> byCase = IntStream.range(0, dictionary.cases().size())
        .mapToObj(number -> CoveringStates.of(number, states)).toList();
    for (CircuitState state : states) {
      compare(dictionary, state, one.draws().get(0), number -> byCase.get(number).contains(state));
    }
    assertTrue(decided <= MOST_DECIDED * readings, decided + " of " + readings + " had to be decided in decimals");
  }

  private void compare(Dictionary dictionary, CircuitState state, Draw draw, IntPredicate wanted) throws Exception {
    var spice = new Spice(dictionary.network().hertz());
    var all = new ArrayList<Compared>();
    for (int i : IntStream.range(0, dictionary.cases().size()).filter(wanted).toArray()) {
      Settle.Result result = Settle.of(dictionary, state, i, draw);
      var random = new Random(31L * i + state.positions().hashCode());
      int[][] pairs = pairs(dictionary.network().nodeCount(), result.network(), random);
      all.add(
          new Compared(result.name(), result.netlist(), result.network(), spice.add(result.netlist()), pairs,
              Optional.empty()));
      for (MeterFunction meter : meters(random)) {
        Netlist metered = metered(result.netlist(), meter, pairs[0]);
        all.add(new Compared(result.name(), metered, result.network(), spice.add(metered), new int[][] {pairs[0]},
            Optional.of(meter)));
      }
    }
    var volts = spice.run();
    all.forEach(one -> assertAgrees(one, volts));
  }

  private static List<MeterFunction> meters(Random random) {
    List<MeterFunction> both = List.of(MeterFunction.VOLTS, MeterFunction.VOLTS_LOW_IMPEDANCE);
    return ShortRun.IS ? List.of(both.get(random.nextInt(2))) : both;
  }

  /** Pairs of nodes that something ties together; those of a floating part among themselves too. */
  private static int[][] pairs(int nodeCount, SolvedNetwork network, Random random) {
    var pairs = new ArrayList<int[]>();
    while (pairs.size() < PAIRS) {
      int a = random.nextInt(nodeCount);
      int b = random.nextInt(nodeCount);
      if (a != b && network.connected(a, b)) {
        pairs.add(new int[] {a, b});
      }
    }
    return pairs.toArray(int[][]::new);
  }

  private static Netlist metered(Netlist netlist, MeterFunction meter, int[] pair) {
    Phasor y = meter.admittance(netlist.hertz());
    String a = Schematic.node(pair[0]);
    String b = Schematic.node(pair[1]);
    return netlist.with(Element.resistor("meter", a, b, 1 / y.re()))
        .with(Element.capacitor("input", a, b, y.im() / (2 * Math.PI * netlist.hertz())));
  }

  private void assertAgrees(Compared one, Map<String, Phasor> spice) {
    Exact exact = null;
    for (int[] pair : one.pairs()) {
      Phasor ours = ours(one, pair);
      Phasor theirs = at(spice, pair[0], one.copy()).minus(at(spice, pair[1], one.copy()));
      readings++;
      if (apart(ours, theirs) > RELATIVE) {
        exact = exact == null ? Exact.solve(one.netlist()) : exact;
        Phasor truth = exact.volts(Schematic.node(pair[0]), Schematic.node(pair[1]));
        decided++;
        assertTrue(apart(ours, truth) <= FROM_EXACT,
            () -> one.name() + " " + one.meter() + List.of(pair[0], pair[1]) + ": " + ours + ", ngspice " + theirs
                + ", exactly " + truth);
      }
    }
  }

  private static Phasor ours(Compared one, int[] pair) {
    ComplexRows volts = one.network().volts();
    Phasor open = new Phasor(volts.re[pair[0]][0] - volts.re[pair[1]][0], volts.im[pair[0]][0] - volts.im[pair[1]][0]);
    if (one.meter().isEmpty()) {
      return open;
    }
    double[][] seen = new double[2][1];
    one.network().impedanceBetween(pair[0], pair[1], seen[0], seen[1]);
    Phasor y = one.meter().get().admittance(one.netlist().hertz());
    return open.over(y.times(new Phasor(seen[0][0], seen[1][0])).plus(Phasor.ONE));
  }

  private static Phasor at(Map<String, Phasor> volts, int node, int copy) {
    return node == 0 ? Phasor.ZERO : volts.get(node + "_" + copy);
  }

  private static double apart(Phasor ours, Phasor theirs) {
    double size = Math.max(ours.magnitude(), theirs.magnitude());
    return size > LEAST_VOLTS ? ours.minus(theirs).magnitude() / size : 0;
  }
}
