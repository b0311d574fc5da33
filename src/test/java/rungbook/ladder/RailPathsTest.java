package rungbook.ladder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.Terminal;
import rungbook.system.reader.VariantsReader;

/** Which way from rail to rail shows where two leads are; by hand, from the text of the system. */
class RailPathsTest {

  private static final String TEXT = """
      ---
      title: Bench
      ---

      ```locations
      bench: start
      ```

      ```points
      L1: at bench
      N: at bench
      R: at bench
      C: at bench
      Y: at bench
      Z: at bench
      M: at bench
      ground: at bench
      ```

      ```controls
      call: off, on, at bench
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, L1 to N
      transformer: transformer, 120 V primary, 24 V secondary, 40 VA, regulation 12 % of full load, L1 to N, R to C
      thermostat: contact, R to Y, closed when call on
      relay: coil, 24 V, 6 VA, Y to C
      second thermostat: contact, R to Z, closed when call on
      link: contact, Y to Z, closed when call on
      valve: coil, 24 V, 10 VA, Z to M
      valve return: wire, 0.1 ohm, M to C
      ```
      """;

  private static final RailPaths PATHS = RailPaths
      .of(VariantsReader.read("bench", DocumentReader.read(new Source("bench", TEXT))).systems().base());

  private static String way(String... points) {
    return PATHS.through(Stream.of(points).map(point -> new Terminal(point, "bench")).toList()).stream()
        .map(path -> path.rung().name() + ": "
            + path.elements().stream().map(Element::name).collect(Collectors.joining(", ")))
        .collect(Collectors.joining("; "));
  }

  @Test
  void pointsOfOneRungAreShownOnIt() {
    assertEquals("relay: thermostat, relay", way("y", "c"));
    assertEquals("relay: thermostat, relay", way("y", "r"));
  }

  /** The way around through the link has a contact more. */
  @Test
  void currentTakesTheOwnContact() {
    assertEquals("valve: second thermostat, valve, valve return", way("z", "c"));
    assertEquals("valve: second thermostat, valve, valve return", way("m"));
  }

  /** Through the relay there is an element less than through the valve; the link is drawn on the rung of the valve. */
  @Test
  void pointsOfTwoRungsAreOnAWayThroughBoth() {
    assertEquals("valve: second thermostat, link, relay", way("y", "z"));
  }

  @Test
  void betweenTheRailsIsTheSource() {
    assertEquals("transformer: transformer secondary", way("r", "c"));
  }

  @Test
  void pointsOfTwoCircuitsAreOnTwoRungs() {
    assertEquals("relay: thermostat, relay; supply: supply", way("y", "l1"));
  }

  @Test
  void groundIsNoPointOfARung() {
    assertEquals("relay: thermostat, relay", way("y", "ground"));
    assertEquals("", way("ground"));
  }

  @Test
  void nothingIsShownForAPointThatNoPartHas() {
    assertEquals("", way("q"));
  }
}
