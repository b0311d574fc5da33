package rungbook.circuit;

import rungbook.system.Names;
import rungbook.system.Terminal;

/** Where a meter is put and how it is set. A clamp goes around the wire that ends at {@code red}; {@code black} is then the same. */
public record Probe(Meter meter, Terminal red, Terminal black) {

  /** Both leads at one place, by the point's names. */
  public static Probe at(String place, Meter meter, String red, String black) {
    return new Probe(meter, new Terminal(Names.key(red), Names.key(place)), new Terminal(Names.key(black), Names.key(place)));
  }
}
