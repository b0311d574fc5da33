package rungbook.circuit.network;

import java.util.function.Function;

/**
 * A branch of the network: two nodes and the admittance between them.
 *
 * @param key the branch's key
 * @param part the key of the part that it belongs to
 * @param a the first node; 0 is ground
 * @param b the second node
 * @param released admittance at the supply's frequency before pull-in, siemens
 * @param on admittance at the supply's frequency when pulled in or closed, siemens
 * @param direct admittance for direct current, siemens
 */
public record Branch(
    String key, String part, int a, int b, Kind kind, Function<Draw, Phasor> released, Function<Draw, Phasor> on,
    Function<Draw, Phasor> direct) {

  /** When a branch conducts. */
  public enum Kind {
    /** Always. */
    FIXED,
    /** While it is closed. */
    SWITCH,
    /** Until overcurrent opens it. */
    FUSE,
    /** Always; its admittance changes when it pulls in. */
    LOAD
  }

  static Branch fixed(String key, String part, int a, int b, Function<Draw, Phasor> ac, Function<Draw, Phasor> direct) {
    return new Branch(key, part, a, b, Kind.FIXED, ac, ac, direct);
  }

  static Branch contact(String key, String part, int a, int b, Kind kind, Function<Draw, Phasor> closed) {
    return new Branch(key, part, a, b, kind, closed, closed, closed);
  }
}
