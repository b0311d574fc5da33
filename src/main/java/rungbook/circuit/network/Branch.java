package rungbook.circuit.network;

import java.util.function.Function;

/**
 * One limb of the wired system: two nodes and what lies between them, siemens.
 *
 * @param key the limb's key
 * @param part the key of the part it belongs to
 * @param a the first node; 0 is ground
 * @param rest at the supply's frequency, before it has pulled in
 * @param on at the supply's frequency, pulled in, or closed
 * @param direct for a direct current
 */
public record Branch(
    String key, String part, int a, int b, Kind kind, Function<Draw, Phasor> rest, Function<Draw, Phasor> on,
    Function<Draw, Phasor> direct) {

  public enum Kind {
    /** Always there. */
    FIXED,
    /** There while it is closed. */
    SWITCH,
    /** There until its current opens it. */
    FUSE,
    /** Always there, and changes as it comes on. */
    LOAD
  }

  static Branch fixed(String key, String part, int a, int b, Function<Draw, Phasor> ac, Function<Draw, Phasor> direct) {
    return new Branch(key, part, a, b, Kind.FIXED, ac, ac, direct);
  }

  static Branch contact(String key, String part, int a, int b, Kind kind, double ohms) {
    Function<Draw, Phasor> closed = draw -> Phasor.of(1 / ohms);
    return new Branch(key, part, a, b, kind, closed, closed, closed);
  }
}
