package rungbook.circuit.network;

/** Quantities that vary between installations. A corner of the tolerance box moves each of these for all parts. */
public enum Tolerance {
  /** Volts of supplies, of a fault's supply too. */
  SUPPLY,
  /** Temperature of conductors, and ohms of wires and supplies. */
  TEMPERATURE,
  /** Length of cables. */
  LENGTH,
  /** No-load volts and winding resistance of transformers. */
  TRANSFORMER,
  /** Impedance of coils, motors and other loads; high is a high impedance, and so a low power. */
  LOAD,
  /** Pick-up and drop-out volts of coils and boards. */
  PICK_UP,
  /** Capacitance of capacitors, and between the conductors of a cable. */
  CAPACITANCE,
  /** How bad a fault is, and a quantity outside the circuit, which no other tolerance changes. */
  FAULT;
}
