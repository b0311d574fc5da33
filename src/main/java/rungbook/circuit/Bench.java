package rungbook.circuit;

/** Puts a meter to a netlist and solves it anew: slow, and what the {@link Dictionary} is held to. */
public final class Bench {

  private static final double TEST_AMPS = 1e-3;

  private Bench() {}

  /** AC volts between two nodes, the meter connected. */
  public static Reading volts(Netlist circuit, Meter meter, String red, String black) {
    if (!Islands.of(circuit).together(red, black)) {
      return Reading.None.FLOATING;
    }
    Phasor y = meter.admittance(circuit.hertz());
    double radians = 2 * Math.PI * circuit.hertz();
    var solution =
        Solver.solve(
            circuit
                .with(Element.resistor("meter", red, black, 1 / y.re()))
                .with(Element.capacitor("meter input", red, black, y.im() / radians)));
    return new Reading.Steady(solution.volts(red, black).magnitude());
  }

  /**
   * Ohms between two nodes.
   *
   * @param live the circuit as it stands, to see whether it is dead
   * @param direct the same circuit as a direct current sees it: coils by their wire, capacitors open
   */
  public static Reading ohms(Netlist live, Netlist direct, String red, String black) {
    if (energised(live, red, black)) {
      return Reading.None.LIVE;
    }
    if (!Islands.of(direct).together(red, black)) {
      return Reading.None.OVERLOAD;
    }
    return new Reading.Steady(seenFrom(direct, red, black).magnitude());
  }

  /** Microfarads between two nodes. */
  public static Reading microfarads(Netlist live, String red, String black) {
    if (energised(live, red, black)) {
      return Reading.None.LIVE;
    }
    if (!Islands.of(live).together(red, black)) {
      return new Reading.Steady(0);
    }
    return microfarads(seenFrom(live, red, black), live.hertz());
  }

  /** What a capacitance meter makes of an impedance: an inductive one leaves it without a number. */
  static Reading microfarads(Phasor ohms, double hertz) {
    double farads = ohms.inverse().im() / (2 * Math.PI * hertz);
    return farads >= 0 ? new Reading.Steady(farads * 1e6) : Reading.None.UNSTEADY;
  }

  private static boolean energised(Netlist live, String red, String black) {
    return volts(live, Meter.VOLTS_LOW_IMPEDANCE, red, black) instanceof Reading.Steady seen
        && seen.value() > Meter.DEAD_VOLTS;
  }

  /** The impedance between two nodes with every source at rest, ohms. */
  public static Phasor seenFrom(Netlist circuit, String red, String black) {
    var driven =
        circuit.withoutSources().with(Element.current("test", black, red, Phasor.of(TEST_AMPS)));
    return Solver.solve(driven).volts(red, black).times(1 / TEST_AMPS);
  }
}
