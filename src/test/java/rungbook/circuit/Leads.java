package rungbook.circuit;

import rungbook.system.Names;
import rungbook.system.Terminal;

/** Probes by the names that a system's text uses. */
public final class Leads {

  private Leads() {}

  /** Both leads at one location. */
  public static Probe at(String location, MeterFunction meter, String red, String black) {
    return with(meter, terminal(location, red), terminal(location, black));
  }

  /** A meter of the usual load. */
  static Probe with(MeterFunction meter, Terminal red, Terminal black) {
    return new Probe(meter, meter.usualOhms(), red, black);
  }

  private static Terminal terminal(String location, String point) {
    return new Terminal(Names.key(point), Names.key(location));
  }
}
