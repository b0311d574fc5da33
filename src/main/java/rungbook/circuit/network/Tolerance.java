package rungbook.circuit.network;

/** Quantities that vary between installations. A corner of the tolerance box moves each of these for all parts. */
public enum Tolerance {
  /** Volts of supplies. */
  SUPPLY,
  /** Temperature of conductors. */
  TEMPERATURE,
  /** Length of cables. */
  LENGTH,
  /** No-load volts and winding resistance of transformers. */
  TRANSFORMER,
  /** Impedance of coils, motors and other loads, ±{@value #LOAD_SHARE} of the middle (common practice, no source). */
  LOAD,
  /** Pick-up and drop-out volts of coils and boards. */
  PICK_UP,
  /** Capacitance between the conductors of a cable. */
  CAPACITANCE;

  static final double LOAD_SHARE = 0.1;
}
