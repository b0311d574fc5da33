package rungbook.circuit;

import rungbook.circuit.network.Phasor;

/** One part of a {@link Netlist}, between named nodes; the node {@code 0} is ground. */
public sealed interface Element {

  String name();

  /** Resistance, inductance and capacitance in series; infinite farads mean no capacitor. */
  record Branch(String name, String a, String b, double ohms, double henries, double farads)
      implements Element {

    /** The impedance at a frequency, ohms. */
    public Phasor impedance(double hertz) {
      double radians = 2 * Math.PI * hertz;
      double reactance = radians * henries;
      return new Phasor(ohms, Double.isInfinite(farads) ? reactance : reactance - 1 / (radians * farads));
    }
  }

  /** An ideal voltage source, rms. */
  record Voltage(String name, String plus, String minus, Phasor volts) implements Element {}

  /** An ideal current source that drives its current, rms, out of {@code to}. */
  record Current(String name, String from, String to, Phasor amps) implements Element {}

  /** An ideal transformer: secondary volts are {@code ratio} times primary volts. */
  record Transformer(
      String name, String primaryA, String primaryB, String secondaryA, String secondaryB, double ratio)
      implements Element {}

  static Branch resistor(String name, String a, String b, double ohms) {
    return new Branch(name, a, b, ohms, 0, Double.POSITIVE_INFINITY);
  }

  static Branch inductor(String name, String a, String b, double henries) {
    return new Branch(name, a, b, 0, henries, Double.POSITIVE_INFINITY);
  }

  static Branch capacitor(String name, String a, String b, double farads) {
    return new Branch(name, a, b, 0, 0, farads);
  }

  /** Resistance and reactance in series, as they are at {@code hertz}. */
  static Branch impedance(String name, String a, String b, Phasor ohms, double hertz) {
    double radians = 2 * Math.PI * hertz;
    return ohms.im() >= 0
        ? new Branch(name, a, b, ohms.re(), ohms.im() / radians, Double.POSITIVE_INFINITY)
        : new Branch(name, a, b, ohms.re(), 0, -1 / (radians * ohms.im()));
  }

  static Voltage voltage(String name, String plus, String minus, Phasor volts) {
    return new Voltage(name, plus, minus, volts);
  }

  static Current current(String name, String from, String to, Phasor amps) {
    return new Current(name, from, to, amps);
  }
}
