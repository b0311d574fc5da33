package rungbook.circuit;

import rungbook.circuit.network.Phasor;

/** A way of measuring. On the volts scales the meter's own impedance is part of the circuit. */
public enum MeterFunction {
  /** AC volts, about 10 MΩ beside the capacitance of input and leads (common practice, no source). */
  VOLTS(10e6, 100e-12),
  /** AC volts, about 3 kΩ, which pulls a stray voltage down. */
  VOLTS_LOW_IMPEDANCE(3e3, 100e-12),
  /** A direct current is driven through the dead circuit. */
  OHMS(Double.POSITIVE_INFINITY, 0),
  /** A clamp around one conductor. */
  AMPS(Double.POSITIVE_INFINITY, 0),
  /** An alternating current is driven through the dead circuit; microfarads. */
  MICROFARADS(Double.POSITIVE_INFINITY, 0);

  /** A circuit that shows more than this into the low impedance is not dead, volts. */
  static final double DEAD_VOLTS = 0.5;

  private final double ohms;
  private final double farads;

  MeterFunction(double ohms, double farads) {
    this.ohms = ohms;
    this.farads = farads;
  }

  /** The load of a meter whose text says nothing of it. */
  public double usualOhms() {
    return ohms;
  }

  /** What a meter of the usual load adds between its leads, siemens. */
  public Phasor admittance(double hertz) {
    return admittance(ohms, hertz);
  }

  /** The same of a meter of another load; capacitance of input and leads is the same for all. */
  Phasor admittance(double inputOhms, double hertz) {
    return new Phasor(1 / inputOhms, 2 * Math.PI * hertz * farads);
  }

  /** Whether it needs a circuit without power. */
  public boolean passive() {
    return this == OHMS || this == MICROFARADS;
  }
}
