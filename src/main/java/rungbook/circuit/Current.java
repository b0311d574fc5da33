package rungbook.circuit;

/** What flows: alternating with the sources on, or the direct current of an ohmmeter with none. */
enum Current {
  ALTERNATING,
  DIRECT
}
