package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.circuit.network.Tolerance;

/** A range in a part's line or a fault's is drawn: its ends and its middle show in a reading, worked out by hand. */
class RangesTest {

  private static final String SUPPLY = "supply: supply, 24 V, 0.000001 ohm, S to C";
  private static final String BOND = "bond: joint, C to ground";
  private static final String SWITCH = "hand switch: switch, S to A";

  private static Trial trial(double end, String... parts) {
    return Trial.of((tolerance, part) -> end, "S A B C", "", "fault: raise hand switch by 1 to 5 ohm", parts);
  }

  private static double amps(double end, String thing) {
    return trial(end, SUPPLY, BOND, SWITCH, "thing: " + thing + ", A to C").amps("A");
  }

  /**
   * At its rated 24 V behind a contact of 0.02 Ω, which is 24 V / (24 V / I + 0.02 Ω) for a load of power factor 1. A
   * low draw is a low impedance.
   */
  @ParameterizedTest
  @CsvSource({"'load, 24 V, 3 to 9 VA', 0.375, 0.25, 0.125", "'heater, 24 V, 12 to 36 W', 1.5, 1, 0.5",
      "'heater, 24 V, 0.024 to 0.048 kW', 2, 1.5, 1", "'motor, 24 V, 0.5 to 1.5 A, 1 pf', 1.5, 1, 0.5",
      "'load, 24 V, 12 VA, tolerance 0 %', 0.5, 0.5, 0.5", "'load, 24 V, 12 to 12.0001 VA', 0.5, 0.5, 0.5",
      "'load, 24 V, 12 VA, tolerance 20 %', 0.625, 0.5, 0.4166667", "'load, 24 V, 12 VA', 0.5555556, 0.5, 0.4545455"})
  void aLoadDrawsWhatItsRangeSays(String thing, double low, double middle, double high) {
    List<Double> expected = List.of(low, middle, high);
    for (int end = -1; end <= 1; end++) {
      double rated = expected.get(end + 1);
      assertEquals(24 / (24 / rated + 0.02), amps(end, thing), 1e-5, thing + " at " + end);
    }
  }

  /** The inrush current of a coil that lacks the voltage to pull in: 30 to 60 VA at 24 V, 0.75 to 1.5 A at 14.4 V. */
  @ParameterizedTest
  @CsvSource({"-1, 1.5", "1, 0.75"})
  void inrushHasARangeOfItsOwn(double end, double amps) {
    Trial trial = trial(end, "supply: supply, 14.4 V, 0.000001 ohm, S to C", BOND, SWITCH,
        "thing: coil, 24 V, 6 VA, 30 to 60 VA inrush, A to C");
    assertEquals(amps, trial.amps("A"), 2e-3);
  }

  /** Locked: 2 to 4 A at 24 V, 1 to 2 A at 12 V, which is under the 60 % that start a motor. */
  @ParameterizedTest
  @CsvSource({"-1, 2", "1, 1"})
  void lockedAmpsHaveARangeOfTheirOwn(double end, double amps) {
    Trial trial = trial(end, "supply: supply, 12 V, 0.000001 ohm, S to C", BOND, SWITCH,
        "thing: motor, 24 V, 1 A, 2 to 4 A locked, A to C");
    assertEquals(amps, trial.amps("A"), 2e-2);
  }

  /** With the switch off; 0.4 to 0.6 of 24 Ω for the power factor. */
  @ParameterizedTest
  @CsvSource({"'wire, 0.5 to 1 ohm', 0.5, 0.75, 1", "'load, 24 V, 24 VA, 10 to 20 ohm', 10, 15, 20",
      "'load, 24 V, 24 VA, 0.4 to 0.6 pf, tolerance 0 %', 9.6, 12, 14.4",
      "'coil, 24 V, 6 VA, 8 to 12 ohm', 8, 10, 12", "'motor, 24 V, 1 A, 2 to 4 ohm', 2, 3, 4",
      "'load, 24 V, 24 VA, 10 ohm', 9, 10, 11"})
  void anOhmmeterReadsTheRange(String thing, double low, double middle, double high) {
    List<Double> expected = List.of(low, middle, high);
    for (int end = -1; end <= 1; end++) {
      Trial trial = trial(end, SUPPLY, BOND, SWITCH, "thing: " + thing + ", A to B", "link: joint, B to C");
      assertEquals(expected.get(end + 1), trial.in(trial.start().isolate("hand switch")).ohms("A", "B"), 1e-6,
          thing + " at " + end);
    }
  }

  @ParameterizedTest
  @CsvSource({"'37.6 to 42.4 uF', 37.6, 40, 42.4", "'40 uF', 40, 40, 40", "'40 uF, tolerance 6 %', 37.6, 40, 42.4"})
  void aMeterReadsTheMicrofaradsOfTheRange(String size, double low, double middle, double high) {
    List<Double> expected = List.of(low, middle, high);
    for (int end = -1; end <= 1; end++) {
      Trial trial = trial(end, SUPPLY, BOND, SWITCH, "thing: capacitor, A to C, " + size);
      assertEquals(expected.get(end + 1),
          trial.in(trial.start().isolate("hand switch")).read("healthy", MeterFunction.MICROFARADS, "A", "C"), 1e-6);
    }
  }

  /** 24 V on 1 to 3 Ω inside and 10 Ω outside. */
  @ParameterizedTest
  @CsvSource({"-1, 21.8181818", "0, 20", "1, 18.4615385"})
  void aSupplysOhmsAreDrawn(double end, double volts) {
    Trial trial = Trial.of((tolerance, part) -> end, "S C", "", "", "supply: supply, 24 V, 1 to 3 ohm, S to C", BOND,
        "thing: heater, 24 V, 57.6 W, tolerance 0 %, S to C");
    assertEquals(volts, trial.volts("S", "C"), 1e-4);
  }

  /** 24 Ω behind 1.02 to 5.02 Ω. */
  @ParameterizedTest
  @CsvSource({"-1, 1.02", "0, 3.02", "1, 5.02"})
  void aFaultsRangeIsDrawn(double end, double ohms) {
    Trial trial = trial(end, SUPPLY, BOND, SWITCH, "thing: heater, 24 V, 24 W, tolerance 0 %, A to C");
    assertEquals(24 * 24 / (24 + ohms), trial.read("fault", MeterFunction.VOLTS, "A", "C"), 1e-3);
  }

  /** Two loads, and two quantities of one load, have draws that do not depend on one another. */
  @Test
  void everyQuantityOfEveryPartHasItsOwnDraw() {
    Set<String> keys = new HashSet<>();
    Draw noting = (tolerance, part) -> {
      if (tolerance == Tolerance.LOAD) {
        keys.add(part);
      }
      return 0;
    };
    Trial.of(noting, "S A C", "", "", SUPPLY, BOND, SWITCH,
        "first: coil, 24 V, 6 to 12 VA, 20 to 30 VA inrush, 8 to 12 ohm, A to C",
        "second: motor, 24 V, 1 to 2 A, 0.7 to 0.9 pf, A to C").amps("A");
    assertEquals(Set.of("first", "second", "first VA", "first VA inrush", "first ohm", "second A", "second pf"), keys);
  }

  @Test
  void drawsOfTwoQuantitiesDiffer() {
    Draw draw = Samples.seeded(1, 1).draws().get(0);
    assertNotEquals(draw.at(Tolerance.LOAD, "first VA"), draw.at(Tolerance.LOAD, "first ohm"));
  }

  /** A rating that nothing draws from is one number. */
  @ParameterizedTest
  @ValueSource(strings = {"fuse: fuse, 3 to 5 A, A to B", "hand: breaker, 10 to 15 A, A to B",
      "thing: load, 20 to 24 V, 6 VA, A to C", "thing: motor, 20 to 24 V, 6 A, A to C",
      "supply 2: supply, 20 to 24 V, 0.1 ohm, A to C", "supply 2: supply, 24 V, 50 to 60 Hz, 0.1 ohm, A to C",
      "late: state, set when hand switch open, reset when hand switch closed, after 2 to 3 rounds",
      "t: transformer, 24 V primary, 12 V secondary, 20 to 40 VA, regulation 10 % of full load, A to C, B to C"})
  void aRatingIsOneNumber(String line) {
    var problems = Trial.read("S A B C", "", "", SUPPLY, BOND, SWITCH, "load: load, 24 V, 5 VA, A to C", line)
        .problems();
    assertEquals(Set.of("range-not-drawn"),
        problems.stream().map(problem -> problem.code().name()).collect(Collectors.toSet()));
  }
}
