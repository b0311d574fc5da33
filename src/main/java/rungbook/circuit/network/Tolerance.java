package rungbook.circuit.network;

/** What differs from one installation to the next. A corner of the tolerance box moves each of these as one. */
public enum Tolerance {
  /** Volts of each supply within its spread. */
  SUPPLY,
  /** Temperature of conductors. */
  TEMPERATURE,
  /** Length of cables. */
  LENGTH,
  /** Volts without load and winding resistance of transformers. */
  TRANSFORMER,
  /** Impedance of coils, motors and other loads, ±{@value #LOAD_SHARE} of the middle (common practice, no source). */
  LOAD,
  /** Volts at which coils and boards come on and go off. */
  PICK_UP,
  /** Capacitance between the conductors of a cable. */
  CAPACITANCE;

  static final double LOAD_SHARE = 0.1;
}
