package rungbook.circuit;

import java.util.function.Function;

/** How a fault alters the wired system. */
sealed interface Change {

  /** No current passes a link. */
  record Open(int link) implements Change {}

  /** Ohms in series with a link. */
  record Raise(int link, double ohms) implements Change {}

  /** Ohms between two nodes inside the part of a link: there whether or not the link is closed, gone when it is taken off. */
  record Bridge(int link, int a, int b, double ohms) implements Change {}

  /** A new way between two nodes, siemens. */
  record Join(int a, int b, Function<Draw, Phasor> siemens) implements Change {}

  /** Another core in a transformer. */
  record Core(int coupler, double timesOhms, double timesRatio) implements Change {}
}
