package rungbook.circuit;

import rungbook.circuit.network.Phasor;

/** A meter function. On the volts functions the meter's input impedance is part of the circuit. */
public enum MeterFunction {
  /** AC volts, about 10 MΩ in parallel with the capacitance of input and leads (common practice, no source). */
  VOLTS(10e6, 100e-12),
  /** AC volts at low impedance, about 3 kΩ, which pulls a stray voltage down (common practice, no source). */
  VOLTS_LOW_IMPEDANCE(3e3, 100e-12),
  /** Drives a direct current through the de-energized circuit. */
  OHMS(Double.POSITIVE_INFINITY, 0),
  /** Clamps around one conductor. */
  AMPS(Double.POSITIVE_INFINITY, 0),
  /** Drives an alternating current through the de-energized circuit. */
  MICROFARADS(Double.POSITIVE_INFINITY, 0),
  /** Measures what the system states outside the circuit: a thermometer, a manometer, a flame current. */
  OUTSIDE(Double.POSITIVE_INFINITY, 0);

  /** A circuit that shows more than this at low impedance is live, volts. */
  public static final double DEAD_VOLTS = 0.5;

  private final double ohms;
  private final double farads;

  MeterFunction(double ohms, double farads) {
    this.ohms = ohms;
    this.farads = farads;
  }

  /** The input resistance of a meter whose text states none, ohms. */
  public double usualOhms() {
    return ohms;
  }

  /** The admittance between the leads of a meter of the usual load, siemens. */
  public Phasor admittance(double hertz) {
    return admittance(ohms, hertz);
  }

  /** The same for another input resistance; the capacitance of input and leads is the same for all meters. */
  public Phasor admittance(double inputOhms, double hertz) {
    return new Phasor(1 / inputOhms, 2 * Math.PI * hertz * farads);
  }

  /** Whether the function needs a de-energized circuit. */
  public boolean passive() {
    return this == OHMS || this == MICROFARADS;
  }
}
