package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Tolerance;

/** Contacts, cables and meters: each constant in one reading that changes with it, worked out beside it. */
class WireConstantsTest {

  private static final String SUPPLY = "supply: supply, 24 V, 0.001 ohm, R to C";
  private static final String BOND = "bond: joint, C to ground";

  /** 10 A: a load of 2.4 Ω. */
  private static final String TEN_AMPS = "heater: heater, 24 V, 240 W, %s to C";

  private static double tenAmpsThrough(double ohms) {
    return 24 / (2.4 + 0.001 + ohms) * ohms;
  }

  /**
   * Contact, fuse, breaker and a wire without its ohms: 0.02 Ω with its screws (common practice, no source): 0.2 V at
   * 10 A.
   */
  @ParameterizedTest
  @CsvSource({"'contact: contact, R to A, closed when hand switch closed'", "'fuse: fuse, 20 A, R to A'",
      "'breaker: breaker, 20 A, R to A'", "'wire: wire, R to A'"})
  void closedContactDropsAFifthOfAVoltAtTenAmps(String part) {
    Trial trial = Trial.of("R C A", SUPPLY, BOND, part, TEN_AMPS.formatted("A"));
    assertEquals(tenAmpsThrough(0.02), trial.volts("R", "A"), 0.001);
  }

  /** A jumper is as good as a contact. */
  @Test
  void jumperDropsAFifthOfAVoltAtTenAmps() {
    Trial trial = Trial.of("R C A", SUPPLY, BOND, "interlock: interlock, R to A, opens with lid",
        TEN_AMPS.formatted("A"));
    CircuitState bypassed = trial.start().open("lid").bypass("interlock");
    assertEquals(tenAmpsThrough(0.02), trial.in(bypassed).volts("R", "A"), 0.001);
  }

  /** A short inside a part and between two points: 0.02 Ω beside it. */
  @ParameterizedTest
  @CsvSource({"short resistor", "short R to A"})
  void shortLeavesAContact(String effect) {
    Trial trial = Trial.of(Draw.MIDDLE, "R C A", "", "bridged: " + effect, SUPPLY, BOND,
        "resistor: heater, 24 V, 57.6 W, R to A", TEN_AMPS.formatted("A"));
    assertEquals(tenAmpsThrough(1 / (1 / 10.0 + 1 / 0.02)), trial.read("bridged", MeterFunction.VOLTS, "R", "A"),
        0.001);
  }

  /** Volts on an open conductor beside a live one, by the capacitive divider into 10 MΩ and 100 pF. */
  private static double divider(double nanofarads, double nanofaradsToGround) {
    double radians = 2 * Math.PI * 60;
    return 24 * radians * nanofarads * 1e-9
        / Math.hypot(1e-7, radians * ((nanofarads + nanofaradsToGround) * 1e-9 + 100e-12));
  }

  private static final String CABLE = "cable: cable, 18 AWG, 50 ft, bench to shed, conductor R, conductor Y";

  private static Trial cable(double part) {
    return Trial.of((tolerance, name) -> tolerance == Tolerance.CAPACITANCE ? part : 0, "R* C Y*", "",
        "broken: open Y cable", "supply: supply, 24 V, 0.001 ohm, R at bench to C", BOND, CABLE);
  }

  /**
   * 20 to 40 pF for each foot between conductors, 3 to 8 pF to ground (common practice, no source): 50 ft of a
   * conductor that nothing is connected to.
   */
  @ParameterizedTest
  @CsvSource({"-1, 20, 3", "0, 30, 5.5", "1, 40, 8"})
  void openConductorReadsWhatItsCapacitancePerFootGives(double part, double picofarads, double toGround) {
    assertEquals(divider(50e-3 * picofarads, 50e-3 * toGround), cable(part).volts("Y", "C"), 0.01);
  }

  /** A conductor broken at one point keeps half of its capacitance on either side. */
  @Test
  void brokenConductorKeepsHalfOfItsCapacitance() {
    assertEquals(divider(25e-3 * 30, 25e-3 * 5.5), cable(0).read("broken", MeterFunction.VOLTS, "Y", "C"), 0.01);
  }

  /**
   * The low-impedance mode of 3 kΩ takes the same conductor under a hundredth of a volt (see the 1 nF row of the stray
   * table).
   */
  @Test
  void lowImpedanceTakesTheVoltsAway() {
    double amps = 24 * 2 * Math.PI * 60 * 50 * 30e-12;
    assertEquals(amps * 3e3, cable(0).read("healthy", MeterFunction.VOLTS_LOW_IMPEDANCE, "Y", "C"), 0.001);
  }

  /** 10 MΩ input (several makers' pages): behind 1 MΩ it reads an eleventh too low. 3 kΩ behind 3 kΩ reads half. */
  @Test
  void metersLoadWhatTheyMeasure() {
    Trial trial = Trial.of("R C A B", SUPPLY, BOND, "megohm: wire, 1000000 ohm, R to A",
        "kilohms: wire, 3000 ohm, R to B");
    assertEquals(24 / Math.hypot(1.1, 2 * Math.PI * 60 * 100e-12 * 1e6), trial.volts("A", "C"), 0.005);
    assertEquals(12.0, trial.read("healthy", MeterFunction.VOLTS_LOW_IMPEDANCE, "B", "C"), 0.005);
  }

  /** 100 pF of input and leads beside the 10 MΩ (common practice, no source): behind 100 pF it reads 7.2 of 24 V. */
  @Test
  void inputCapacitanceCountsBehindACapacitor() {
    Trial trial = Trial.of("R C A", SUPPLY, BOND, "stray: capacitor, R to A, 0.0001 uF");
    double siemens = 2 * Math.PI * 60 * 100e-12;
    assertEquals(24 * siemens / Math.hypot(1e-7, 2 * siemens), trial.volts("A", "C"), 0.01);
  }

  /**
   * 18 AWG is 6.385 Ω for 1000 ft at 20 °C (handbook wire table), plus 0.393 % for each kelvin (IEC 60028); without a
   * temperature in the text a cable is at 0 to 50 °C.
   */
  @ParameterizedTest
  @CsvSource({"-1, 0", "0, 25", "1, 50"})
  void cableWithoutATemperatureIsBetweenFreezingAndFiftyDegrees(double part, double celsius) {
    Trial trial = Trial.of((tolerance, name) -> tolerance == Tolerance.TEMPERATURE ? part : 0, "S R* C Y*", "", "",
        "supply: supply, 24 V, 0.001 ohm, S to C", BOND, "hand switch: switch, S to R at bench",
        "cable: cable, 18 AWG, 1000 ft, bench to shed, conductor R, conductor Y",
        "far joint: joint, R at shed to Y at shed");
    Trial dead = trial.in(trial.start().isolate("hand switch"));
    assertEquals(2 * 6.385 * (1 + 0.00393 * (celsius - 20)), dead.ohms("R", "Y"), 0.02);
  }

  /** 60 Hz unless the text says otherwise: 24 V drive 90.5 mA through 10 µF; at 50 Hz 75.4 mA. */
  @ParameterizedTest
  @CsvSource({"'', 60", "'50 Hz, ', 50"})
  void supplyIsOfSixtyHertzUnlessItSaysOtherwise(String written, double hertz) {
    Trial trial = Trial.of("R C A", "supply: supply, 24 V, " + written + "0.001 ohm, R to C", BOND,
        "wire: wire, R to A", "capacitor: capacitor, A to C, 10 uF");
    assertEquals(24 * 2 * Math.PI * hertz * 10e-6, trial.amps("R"), 1e-4);
  }
}
