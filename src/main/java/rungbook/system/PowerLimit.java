package rungbook.system;

/** What limits the power of a transformer's secondary (NEC Article 725, from memory). */
public enum PowerLimit {
  /** Nothing: the circuit is wired as Class 1. */
  CLASS_1,
  /** The transformer itself; a Class 2 circuit needs no fuse then. */
  INHERENT,
  /** The overcurrent protection: a Class 2 circuit with a fuse. */
  FUSE
}
