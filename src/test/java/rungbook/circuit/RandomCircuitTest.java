package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.circuit.network.Phasor;

/** Sums that have to hold in any circuit; the seed repeats a failing one. */
class RandomCircuitTest {

  private static final double SOURCE_VOLTS = 24;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void currentsIntoEachNodeAddUpToNothing(long seed) {
    var circuit = circuit(new Random(seed));
    var solution = Solver.solve(circuit);
    double scale = Math.max(1, solution.amps("V").magnitude());
    for (String node : circuit.nodes()) {
      assertTrue(into(node, circuit, solution).magnitude() < 1e-9 * scale, node);
    }
  }

  /** Tellegen: the complex powers of all elements add up to nothing. */
  @ParameterizedTest
  @MethodSource("seeds")
  void powersAddUpToNothing(long seed) {
    var circuit = circuit(new Random(seed));
    var solution = Solver.solve(circuit);
    Phasor sum = Phasor.ZERO;
    for (Element element : circuit.elements()) {
      var ends = Netlist.ends(element);
      Phasor amps = solution.amps(element.name());
      sum = sum.plus(solution.volts(ends.get(0), ends.get(1)).times(new Phasor(amps.re(), -amps.im())));
    }
    double scale = Math.max(1, solution.amps("V").magnitude()) * SOURCE_VOLTS;
    assertTrue(sum.magnitude() < 1e-9 * scale);
  }

  /** Source and ammeter may change places. */
  @ParameterizedTest
  @MethodSource("seeds")
  void reciprocity(long seed) {
    var random = new Random(seed);
    var quiet = circuit(random).withoutSources();
    String p = "n" + random.nextInt(8);
    String q = "n" + random.nextInt(8);
    Phasor forth = transfer(quiet, p, q);
    Phasor back = transfer(quiet, q, p);
    assertEquals(0, forth.minus(back).magnitude(), 1e-9 * Math.max(1, forth.magnitude()));
  }

  private static Phasor transfer(Netlist quiet, String nodeVoltages, String read) {
    return Solver.solve(quiet.with(Element.current("I", "0", nodeVoltages, Phasor.ONE))).volts(read);
  }

  private static Phasor into(String node, Netlist circuit, Solution solution) {
    Phasor sum = Phasor.ZERO;
    for (Element element : circuit.elements()) {
      var ends = Netlist.ends(element);
      sum = ends.get(0).equals(node) ? sum.minus(solution.amps(element.name())) : sum;
      sum = ends.get(1).equals(node) ? sum.plus(solution.amps(element.name())) : sum;
    }
    return sum;
  }

  /** A ring with chords of resistors, coils and capacitors over eight decades, fed at one node. */
  private static Netlist circuit(Random random) {
    List<Element> elements = new ArrayList<>();
    elements.add(Element.voltage("V", "s", "0", Phasor.of(SOURCE_VOLTS)));
    elements.add(Element.resistor("source", "s", "n0", 1));
    for (int i = 0; i < 8; i++) {
      elements.add(branch("ring" + i, "n" + i, i == 7 ? "0" : "n" + (i + 1), random));
      elements.add(branch("chord" + i, "n" + random.nextInt(8), "n" + random.nextInt(8), random));
    }
    return new Netlist(60, elements);
  }

  private static Element branch(String name, String a, String b, Random random) {
    double size = Math.pow(10, random.nextDouble() * 8 - 2);
    return switch (random.nextInt(3)) {
      case 0 -> Element.resistor(name, a, b, size);
      case 1 -> Element.impedance(name, a, b, new Phasor(size * 0.2, size), 60);
      default -> Element.impedance(name, a, b, new Phasor(size * 0.01, -size), 60);
    };
  }
}
