package rungbook.circuit.network;

/** What flows: alternating with the sources on, or the direct current of an ohmmeter with none. */
public enum Current {
  ALTERNATING,
  DIRECT
}
