package rungbook.circuit.network;

import java.util.function.Function;

/** How a fault alters the wired system. */
public sealed interface NetworkChange {

  /** No current passes a link. */
  record Open(int link) implements NetworkChange {}

  /** Ohms in series with a link. */
  record Raise(int link, double ohms) implements NetworkChange {}

  /**
   * Ohms between two nodes inside the part of a link: there whether or not the link is closed, gone when it is taken
   * off.
   */
  record Bridge(int link, int a, int b, double ohms) implements NetworkChange {}

  /** A new way between two nodes, siemens. */
  record Join(int a, int b, Function<Draw, Phasor> siemens) implements NetworkChange {}

  /** Another core in a transformer. */
  record Core(int coupler, double timesOhms, double timesRatio) implements NetworkChange {}
}
