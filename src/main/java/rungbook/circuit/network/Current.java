package rungbook.circuit.network;

/** The kind of current: alternating with the sources on, or an ohmmeter's direct current with the sources off. */
public enum Current {
  ALTERNATING,
  DIRECT
}
