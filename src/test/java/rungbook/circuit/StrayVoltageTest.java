package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungbook.circuit.Element.capacitor;
import static rungbook.circuit.Element.resistor;
import static rungbook.circuit.Element.voltage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.circuit.network.Phasor;

/** Voltages on open conductors and across open switches; computed, and run again with ngspice 39. */
class StrayVoltageTest {

  @ParameterizedTest
  @CsvSource({"1, 10e6, 23.20", "1, 1e6, 8.47", "1, 3e3, 0.027", "0.3, 10e6, 17.98"})
  void conductorBesideALiveOne(double nanofarads, double meterOhms, double volts) {
    var solution = Solver.solve(
        Netlist.of(60, voltage("V", "R", "0", Phasor.of(24)),
            capacitor("cable", "R", "Y", nanofarads * 1e-9), resistor("meter", "Y", "0", meterOhms)));
    assertEquals(volts, solution.volts("Y").magnitude(), volts < 1 ? 5e-4 : 5e-3);
  }

  @Test
  void closedSwitch() {
    assertEquals(0.00034, across(1e-3, 10e6), 5e-6);
    assertEquals(26.113, coil(1e-3, 10e6), 5e-4);
  }

  @Test
  void openSwitchShowsTheWholeSupply() {
    assertEquals(26.400, across(0, 10e6), 5e-4);
    assertEquals(0.0002, coil(0, 10e6), 5e-5);
  }

  @Test
  void openSwitchWithLowImpedance() {
    assertEquals(26.268, across(0, 3e3), 5e-4);
    assertEquals(0.672, coil(0, 3e3), 5e-4);
  }

  @Test
  void burnedContact() {
    assertEquals(1.677, across(5, 10e6), 5e-4);
    assertEquals(25.761, coil(5, 10e6), 5e-4);
  }

  @Test
  void secondOpenHidesTheFirst() {
    var open = new ArrayList<>(loop(0, 10e6));
    open.set(2, resistor("out", "a", "b", 1e12));
    var solution = Solver.solve(new Netlist(60, open));
    assertEquals(0.00026, solution.volts("b", "c").magnitude(), 5e-6);
  }

  @Test
  void openCoilTakesTheWholeSupply() {
    var loop = new ArrayList<>(loop(1e-3, 0));
    loop.removeIf(e -> e.name().equals("coil"));
    assertEquals(26.400, Bench.volts(new Netlist(60, loop), MeterFunction.VOLTS, "c", "d"), 5e-4);
  }

  @Test
  void aConductorWithNothingBesideItReadsNothing() {
    var alone = Netlist.of(60, voltage("V", "R", "0", Phasor.of(24)), resistor("load", "R", "0", 100),
        resistor("lost", "Y", "Y2", 0.3));
    assertEquals(Reading.FLOATING, Bench.volts(alone, MeterFunction.VOLTS, "Y", "0"));
  }

  private static double across(double contactOhms, double meterOhms) {
    return solve(contactOhms, meterOhms).volts("b", "c").magnitude();
  }

  private static double coil(double contactOhms, double meterOhms) {
    return solve(contactOhms, meterOhms).volts("c", "d").magnitude();
  }

  private static Solution solve(double contactOhms, double meterOhms) {
    return Solver.solve(new Netlist(60, loop(contactOhms, meterOhms)));
  }

  /** 26.4 V behind 1.44 + j0.5 Ω, 50 ft of 18 AWG out and back, a switch, a coil of 7.5 VA. */
  private static List<Element> loop(double contactOhms, double meterOhms) {
    var loop = new ArrayList<Element>();
    loop.add(voltage("V", "s", "0", Phasor.of(26.4)));
    loop.add(Element.impedance("source", "s", "a", new Phasor(1.44, 0.5), 60));
    loop.add(resistor("out", "a", "b", 0.31925));
    loop.add(Element.impedance("coil", "c", "d", new Phasor(12, 75.857), 60));
    loop.add(resistor("back", "d", "0", 0.31925));
    if (contactOhms > 0) {
      loop.add(resistor("contact", "b", "c", contactOhms));
    }
    if (meterOhms > 0) {
      loop.add(resistor("meter", "b", "c", meterOhms));
    }
    return loop;
  }
}
