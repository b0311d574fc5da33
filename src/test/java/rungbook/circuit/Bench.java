package rungbook.circuit;

import rungbook.circuit.network.Phasor;

/** Puts a meter to a netlist and solves it anew: slow, and what the {@link Dictionary} is held to. */
final class Bench {

  private static final double TEST_AMPS = 1e-3;

  private Bench() {}

  /** AC volts between two nodes, the meter connected, coded as in {@link Reading}. */
  static double volts(Netlist circuit, MeterFunction meter, String red, String black) {
    if (!Islands.of(circuit).connected(red, black)) {
      return Reading.FLOATING;
    }
    Phasor y = meter.admittance(circuit.hertz());
    double radians = 2 * Math.PI * circuit.hertz();
    var solution = Solver.solve(
        circuit
            .with(Element.resistor("meter", red, black, 1 / y.re()))
            .with(Element.capacitor("meter input", red, black, y.im() / radians)));
    return solution.volts(red, black).magnitude();
  }

  /** The impedance between two nodes with every source zeroed, ohms. */
  static Phasor impedanceBetween(Netlist circuit, String red, String black) {
    var driven = circuit.withoutSources().with(Element.current("test", black, red, Phasor.of(TEST_AMPS)));
    return Solver.solve(driven).volts(red, black).times(1 / TEST_AMPS);
  }
}
