package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungbook.circuit.Element.capacitor;
import static rungbook.circuit.Element.current;
import static rungbook.circuit.Element.inductor;
import static rungbook.circuit.Element.resistor;
import static rungbook.circuit.Element.voltage;

import org.junit.jupiter.api.Test;
import rungbook.circuit.network.Phasor;

/** Worked examples of textbooks, to the digits they print. */
class SolverReferenceTest {

  private static final double W1000_HZ = 1000 / (2 * Math.PI);

  /** Lessons In Electric Circuits II: 10 V, 60 Hz, 5 Ω and 10 mH in series. */
  @Test
  void resistorAndInductorInSeries() {
    var s = solve(60, volts(10), resistor("R", "a", "b", 5), inductor("L", "b", "0", 10e-3));
    assertPolar(7.985, -37.02, s.volts("a", "b"));
    assertPolar(6.020, 52.98, s.volts("b"));
    assertEquals(1.597, s.amps("R").magnitude(), 5e-4);
  }

  /** Lessons In Electric Circuits II: 120 V, 60 Hz, 250 Ω, 650 mH and 1.5 µF in series. */
  @Test
  void threeInSeries() {
    var s = solve(60, volts(120), resistor("R", "a", "b", 250), inductor("L", "b", "c", 0.65),
        capacitor("C", "c", "0", 1.5e-6));
    assertPolar(0.07773, 80.68, s.amps("R"));
    assertEquals(19.43, s.volts("a", "b").magnitude(), 5e-3);
    assertEquals(19.05, s.volts("b", "c").magnitude(), 5e-3);
    assertEquals(137.5, s.volts("c").magnitude(), 5e-2);
  }

  /** Lessons In Electric Circuits II: the same three in parallel. */
  @Test
  void threeInParallel() {
    var s = solve(60, volts(120), resistor("R", "a", "0", 250), inductor("L", "a", "0", 0.65),
        capacitor("C", "a", "0", 1.5e-6));
    assertPolar(0.6390, -41.31, s.amps("V").times(-1), 5e-5);
    assertEquals(0.4800, s.amps("R").magnitude(), 5e-5);
    assertEquals(0.4897, s.amps("L").magnitude(), 5e-5);
    assertEquals(0.06786, s.amps("C").magnitude(), 5e-6);
  }

  /** Lessons In Electric Circuits II: 4.7 µF, then 470 Ω beside 650 mH and 1.5 µF. */
  @Test
  void seriesAndParallel() {
    var s = solve(60, volts(120), capacitor("C1", "a", "b", 4.7e-6), resistor("R", "b", "0", 470),
        inductor("L", "b", "c", 0.65), capacitor("C2", "c", "0", 1.5e-6));
    Phasor ohms = Phasor.of(120).over(s.amps("C1"));
    assertPolar(818.34, -58.371, ohms, 5e-3);
    assertEquals(0.1466, s.amps("C1").magnitude(), 5e-5);
    assertPolar(65.86, 41.22, s.volts("b"), 5e-3);
  }

  /** Stored course notes: two sources, ω = 1000. */
  @Test
  void twoSources() {
    var s = solve(W1000_HZ, voltage("V1", "a", "0", Phasor.of(10)),
        voltage("V2", "b", "0", Phasor.polar(20, 45)), resistor("R1", "a", "x", 10),
        resistor("R2", "b", "x", 20), inductor("L", "x", "0", 10e-3),
        capacitor("C", "x", "0", 100e-6));
    assertPolar(12.318, 22.5, s.volts("x"), 5e-2);
    assertPolar(1.232, -67.5, s.amps("L"), 5e-2);
  }

  /** Stored course notes: 75∠20°, 6 + j2 in series, −j4 across, 10 Ω out. */
  @Test
  void equivalentSource() {
    var circuit = Netlist.of(60, voltage("V", "a", "0", Phasor.polar(75, 20)),
        Element.impedance("Z1", "a", "b", new Phasor(6, 2), 60),
        Element.impedance("Z2", "b", "0", new Phasor(0, -4), 60), resistor("R", "b", "c", 10));
    var s = Solver.solve(circuit.with(resistor("none", "c", "0", 1e15)));
    assertPolar(47.43, -51.57, s.volts("c"), 5e-3);
    Phasor ohms = Bench.impedanceBetween(circuit, "c", "0");
    assertEquals(12.4, ohms.re(), 5e-4);
    assertEquals(-3.2, ohms.im(), 5e-4);
  }

  @Test
  void idealTransformerKeepsPower() {
    var s = solve(60, volts(120), new Element.Transformer("T", "a", "0", "s", "0", 0.2),
        resistor("load", "s", "0", 24));
    assertPolar(24, 0, s.volts("s"), 1e-9);
    assertEquals(1.0, s.amps("load").magnitude(), 1e-12);
    assertEquals(0.2, s.amps("V").magnitude(), 1e-12);
  }

  @Test
  void aNodeWithoutReturnIsFloatingAndNotZero() {
    var s = solve(60, volts(24), resistor("R", "a", "0", 10), resistor("lost", "x", "y", 10));
    assertTrue(s.floating("x"));
    assertThrows(IllegalStateException.class, () -> s.volts("x"));
    assertEquals(0, s.volts("x", "y").magnitude());
  }

  @Test
  void twoSourcesAcrossEachOtherAreRefused() {
    assertThrows(
        SingularCircuit.class,
        () -> solve(60, volts(24), voltage("V2", "a", "0", Phasor.of(12))));
  }

  @Test
  void aCurrentIntoNothingIsRefused() {
    assertThrows(
        SingularCircuit.class,
        () -> solve(60, current("I", "0", "x", Phasor.ONE), inductor("L", "x", "y", 1)));
  }

  private static Element.Voltage volts(double volts) {
    return voltage("V", "a", "0", Phasor.of(volts));
  }

  private static Solution solve(double hertz, Element... elements) {
    return Solver.solve(Netlist.of(hertz, elements));
  }

  private static void assertPolar(double magnitude, double degrees, Phasor actual) {
    assertPolar(magnitude, degrees, actual, 5e-4 * Math.max(1, magnitude / 10));
  }

  private static void assertPolar(double magnitude, double degrees, Phasor actual, double within) {
    assertEquals(magnitude, actual.magnitude(), within);
    assertEquals(degrees, actual.degrees(), 0.05);
  }
}
