package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Tolerance;

/** What makes parts pull in, drop out, hum, blow and settle; each constant from both sides of its limit. */
class OperationConstantsTest {

  private static final String BOND = "bond: joint, C to ground";
  private static final String SIGHTS = "on: at bench, when thing on\nhumming: at bench, when thing humming\n"
      + "blown: at bench, when fuse open";
  private static final String FUSE = "fuse: fuse, 100 A, R to A";

  private static Trial supplied(double volts, String fuse, String thing) {
    return Trial.of(Draw.MIDDLE, "R C A", SIGHTS, "", "supply: supply, " + volts + " V, 0.001 ohm, R to C", BOND, fuse,
        "thing: " + thing + ", A to C");
  }

  /**
   * A coil has to operate at 85 % of its rating: 20.4 of 24 V (IEC 60947-4-1, from memory). A motor runs from 60 %, a
   * board works from 70 % (common practice, no source).
   */
  @ParameterizedTest
  @CsvSource({"'coil, 24 V, 6 VA', 20.4", "'motor, 120 V, 1 A', 72", "'board, 24 V, 5 VA', 16.8"})
  void thingsComeOnAtTheirShareOfRatedVolts(String thing, double volts) {
    assertTrue(supplied(volts * 1.01, FUSE, thing).seen("on"), "a hundredth above");
    assertTrue(!supplied(volts * 0.99, FUSE, thing).seen("on"), "a hundredth below");
  }

  /** A coil hums from 30 % of the volts that pull it in: 6.1 of 20.4 V (common practice, no source). */
  @Test
  void coilHumsFromThirtyPercentOfItsPickUp() {
    assertTrue(supplied(6.12 * 1.01, FUSE, "coil, 24 V, 6 VA").seen("humming"));
    assertTrue(!supplied(6.12 * 0.99, FUSE, "coil, 24 V, 6 VA").seen("humming"));
  }

  /**
   * AC coils drop out between 20 and 75 % (IEC 60947-4-1, from memory); ours at 50 %, a motor at 50 %, a board at 60 %
   * (common practice, no source). A resistor that the thing itself switches in leaves it with a little more or less
   * than that.
   */
  @ParameterizedTest
  @CsvSource({"'coil, 24 V, 6 VA', 24, 96, 0.4, 0.5", "'motor, 120 V, 1 A', 120, 120, 0.8, 0.5",
      "'board, 24 V, 5 VA', 24, 115.2, 1, 0.6"})
  void thingsDropOutAtTheirShareOfRatedVolts(String thing, double rated, double ohms, double powerFactor,
      double share) {
    assertTrue(holdsWith(share * 1.02, thing, rated, ohms, powerFactor), "two hundredths above");
    assertTrue(!holdsWith(share * 0.98, thing, rated, ohms, powerFactor), "two hundredths below");
  }

  /** Whether a thing that has pulled in at rated volts stays in when a resistor leaves it with a share of them. */
  private static boolean holdsWith(double share, String thing, double rated, double ohms, double powerFactor) {
    double resistance = ohms * powerFactor;
    // |Z / (Z + R)| = share, solved for R
    double series = -resistance
        + Math.sqrt(ohms * ohms / (share * share) - ohms * ohms * (1 - powerFactor * powerFactor));
    Trial trial = Trial.of(Draw.MIDDLE, "R C A", "on: at bench, when thing on", "",
        "supply: supply, " + rated + " V, 0.001 ohm, R to C", BOND,
        "economy resistor: wire, " + series + " ohm, R to A",
        "pull-in contact: contact, R to A, closed when not thing on", "thing: " + thing + ", A to C");
    return trial.volts("A", "C") != Reading.UNSTEADY;
  }

  /**
   * Power factor 0.4 pulled in: the ohmmeter reads 0.4 of 96 Ω where the text does not say; a motor's 0.8 (both common
   * practice).
   */
  @ParameterizedTest
  @CsvSource({"'coil, 24 V, 6 VA', 38.4", "'motor, 24 V, 0.25 A', 76.8", "'board, 24 V, 6 VA', 96"})
  void ohmmeterReadsTheResistanceThatThePowerFactorLeaves(String thing, double ohms) {
    Trial trial = Trial.of("S R C A", "supply: supply, 24 V, 0.001 ohm, S to C", BOND, "hand switch: switch, S to A",
        "thing: " + thing + ", A to C");
    assertEquals(ohms, trial.in(trial.start().isolate("hand switch")).ohms("A", "C"), 0.05);
  }

  /** Power factor 0.6 before it has pulled in (common practice, no source): 30 VA at 24 V are 11.52 + j15.36 Ω. */
  @Test
  void inrushHasItsOwnPowerFactor() {
    Trial trial = Trial.of("R C A", "supply: supply, 15 V, 0.001 ohm, R to C", BOND, "series: wire, 20 ohm, R to A",
        "thing: coil, 24 V, 6 VA, 30 VA inrush, A to C");
    assertEquals(15 * 19.2 / Math.hypot(20.001 + 11.52, 15.36), trial.volts("A", "C"), 0.005);
  }

  /**
   * A fuse opens at 135 % of its rating (UL 248-14: within an hour, from memory), a breaker at once at 5 times (common
   * practice).
   */
  @ParameterizedTest
  @CsvSource({"fuse, 1.35", "breaker, 5"})
  void fusesOpenAtTheirShareOfRatedAmps(String kind, double share) {
    assertTrue(
        !supplied(24, "fuse: " + kind + ", 1 A, R to A", "load, 24 V, " + 24 * share * 0.98 + " VA").seen("blown"));
    assertTrue(
        supplied(24, "fuse: " + kind + ", 1 A, R to A", "load, 24 V, " + 24 * share * 1.02 + " VA").seen("blown"));
  }

  /** Where the text says so, at another multiple. */
  @ParameterizedTest
  @CsvSource({"'fuse, 1 A, opens at 2 times', 2", "'breaker, 1 A, trips at 10 times', 10"})
  void fusesOpenAtTheMultipleOfTheText(String fuse, double times) {
    assertFalse(supplied(24, "fuse: " + fuse + ", R to A", "load, 24 V, " + 24 * times * 0.97 + " VA").seen("blown"));
    assertTrue(supplied(24, "fuse: " + fuse + ", R to A", "load, 24 V, " + 24 * times * 1.05 + " VA").seen("blown"));
  }

  /** Half of 20.4 V. */
  @Test
  void coilHumsFromTheShareOfTheText() {
    assertTrue(supplied(10.2 * 1.01, FUSE, "coil, 24 V, 6 VA, hums from 50 %").seen("humming"));
    assertFalse(supplied(10.2 * 0.99, FUSE, "coil, 24 V, 6 VA, hums from 50 %").seen("humming"));
  }

  /** A breaker that is switched off has the whole supply across it, and no current. */
  @Test
  void breakerThatIsSwitchedOffHasNotTripped() {
    Trial trial = Trial.of(Draw.MIDDLE, "R C A", "tripped: at bench, when hand switch open", "",
        "supply: supply, 24 V, 0.001 ohm, R to C", BOND, "hand switch: breaker, 15 A, R to A",
        "thing: heater, 24 V, 24 W, A to C");
    assertFalse(trial.in(trial.start().isolate("hand switch")).seen("tripped"));
  }

  /** Ohms are read on a circuit that is dead into the low impedance: under 0.5 V (common practice, no source). */
  @Test
  void ohmmeterRefusesMoreThanHalfAVolt() {
    assertEquals(Reading.LIVE, supplied(0.51, FUSE, "load, 24 V, 24 VA").ohms("A", "C"));
    assertTrue(supplied(0.49, FUSE, "load, 24 V, 24 VA").ohms("A", "C") >= 0);
  }

  /** Loads differ by 10 % of their impedance from one installation to the next (common practice, no source). */
  @ParameterizedTest
  @CsvSource({"-1, 0.9", "0, 1", "1, 1.1"})
  void loadsAreSpreadByATenthOfTheirImpedance(double part, double share) {
    Trial trial = Trial.of((tolerance, name) -> tolerance == Tolerance.LOAD ? part : 0, "R C A", "", "",
        "supply: supply, 24 V, 0.001 ohm, R to C", BOND,
        "wire: wire, R to A", "thing: heater, 24 V, 24 W, A to C");
    assertEquals(24 / (24 * share + 0.021), trial.amps("R"), 1e-4);
  }

  /** A sequence of up to 60 rounds settles; one that is still moving then has no steady reading. */
  @Test
  void sequencesOfSixtyRoundsSettle() {
    assertTrue(after(60) != Reading.UNSTEADY);
    assertEquals(Reading.UNSTEADY, after(61));
  }

  private static double after(int rounds) {
    return Trial.of("R C A", "supply: supply, 24 V, 0.001 ohm, R to C", BOND,
        "delay: state, set when thing on, reset when not thing on, after " + rounds + " rounds",
        "contact: contact, R to A, closed when delay", "thing: load, 24 V, 24 VA, R to C").volts("A", "C");
  }
}
