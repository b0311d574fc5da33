package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.system.Fault;

/** What shows at neither end of its range shows nowhere. */
class HiddenFaultsTest {

  /** The coil gets 24 V, and needs 20.4 V (85 %) to pull in and 12 V to hold. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"stiffen coil to 15 to 18 V | true", "stiffen coil to 18 to 26 V | false",
      "overload coil to 101 to 150 % | false", "short R to C through 900000 to 999999 ohm | true",
      "short coil through 5 to 900000 ohm | false", "hold pole open | false", "hold pole closed | true"})
  void aFaultIsHiddenIfNeitherEndShows(String effect, boolean isHidden) {
    var read = Trial.read("R C A B", "on: at bench, when coil on", "fault: " + effect,
        "supply: supply, 24 V, 0.001 ohm, R to C", "bond: joint, C to ground",
        "pole: contact, R to A, closed when coil on or not coil on", "wire: wire, 1 ohm, A to B",
        "coil: coil, 24 V, 6 VA, B to C");
    List<String> hidden = HiddenFaults.of(read.system()).stream().map(Fault::name).toList();
    assertEquals(isHidden ? List.of("fault") : List.of(), hidden);
  }
}
