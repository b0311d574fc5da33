package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rungbook.circuit.network.Draw;

/**
 * What a 40 VA transformer of 120 to 24 V and 10 % regulation reads, worked out from its equivalent circuit: every
 * constant of the model is in one reading that changes with it. The shares are common practice, with no source, unless
 * a test names one.
 */
class TransformerConstantsTest {

  private static final String SUPPLY = "supply: supply, 120 V, 0.001 ohm, L to N";
  private static final String NEUTRAL = "neutral bond: joint, N to ground";
  private static final String COMMON = "common bond: joint, C to ground";
  private static final String TRANSFORMER = "transformer: transformer, 120 V primary, 24 V secondary, 40 VA, "
      + "regulation 10 % of full load, L to N, R to C";
  private static final String POINTS = "L N R C";

  private static final double NO_LOAD_VOLTS = 24 * 1.10;
  private static final double RATED_OHMS = 24 * 24 / 40.0;

  /** (no load − full load) / full load is the regulation: 2.4 V at 1.667 A. */
  private static final double WINDING_OHMS = 2.4 / (40 / 24.0);

  private static final double RATIO = NO_LOAD_VOLTS / 120;
  private static final double PRIMARY_OHMS = WINDING_OHMS / 2 / (RATIO * RATIO);

  private static Trial loaded(String load) {
    return Trial.of(POINTS, SUPPLY, NEUTRAL, COMMON, TRANSFORMER, load);
  }

  /** The secondary's own rating, 24 V and 40 VA, is what the regulation promises; 40 VA at 24 V is 1.67 A. */
  @Test
  void ratedLoadGetsRatedVolts() {
    Trial trial = loaded("heater: heater, 24 V, 40 W, R to C");
    assertEquals(24.0, trial.volts("R", "C"), 0.1);
    assertEquals(40 / 24.0, trial.amps("R"), 0.01);
  }

  /** An unloaded small transformer draws some 15 % of its rating: 6 VA of 40, 50 mA at 120 V. */
  @Test
  void unloadedTransformerDrawsItsMagnetizingCurrent() {
    Trial trial = Trial.of("main L N R C", "supply: supply, 120 V, 0.001 ohm, main to N",
        "primary wire: wire, main to L", NEUTRAL, COMMON, TRANSFORMER);
    assertEquals(0.15 * 40 / 120, trial.amps("main"), 0.0005);
  }

  /**
   * The magnetizing current at a power factor of 0.4 drops volts in the primary winding, so the ratio alone reads too
   * high.
   */
  @Test
  void unloadedVoltsAreTheRatioLessTheMagnetizingDrop() {
    double amps = 0.15 * 40 / 120;
    double inPhase = 120 - amps * 0.4 * PRIMARY_OHMS;
    double quadrature = amps * Math.sqrt(1 - 0.4 * 0.4) * PRIMARY_OHMS;
    assertEquals(RATIO * Math.hypot(inPhase, quadrature), loaded("").volts("R", "C"), 0.002);
  }

  /**
   * Half the copper is in the primary; the common practice of idle 24 V circuits reading near 27 V sets the no-load
   * volts.
   */
  @Test
  void ohmmeterReadsHalfTheCopperOnEachSide() {
    Trial trial = Trial.of("main L N R C", "supply: supply, 120 V, 0.001 ohm, main to N",
        "hand switch: switch, main to L", NEUTRAL, COMMON, TRANSFORMER);
    Trial dead = trial.in(trial.start().isolate("hand switch"));
    assertEquals(PRIMARY_OHMS + 0.02, dead.ohms("L", "N"), 0.01);
    assertEquals(WINDING_OHMS / 2, dead.ohms("R", "C"), 0.001);
  }

  /**
   * Leakage: 0.3 times the resistance of the core's quarter. A purely inductive load shows it, a resistive one hides
   * it.
   */
  @Test
  void inductiveLoadShowsTheLeakageReactance() {
    Trial trial = loaded("reactor: load, 24 V, 40 VA, 0.001 pf, R to C");
    double reactance = RATED_OHMS + 0.3 * WINDING_OHMS / 4;
    double amps = NO_LOAD_VOLTS / Math.hypot(WINDING_OHMS, reactance);
    double magnetizing = 0.15 * 40 / 120 * PRIMARY_OHMS * 0.4 / 120;
    assertEquals(amps * RATED_OHMS * (1 - magnetizing), trial.volts("R", "C"), 0.02);
    assertTrue(trial.volts("R", "C") < 26.1, "without leakage it would read 26.2 V");
  }

  /** Windings of three times the resistance drop three times the volts: 24 of 26.4 V becomes 20.3. */
  @Test
  void weakTransformerHasItsWholeCopperMultiplied() {
    Trial trial = Trial.of(Draw.MIDDLE, POINTS, "", "weak: weaken transformer 3 times", SUPPLY, NEUTRAL, COMMON,
        TRANSFORMER, "heater: heater, 24 V, 40 W, R to C");
    double expected = NO_LOAD_VOLTS * RATED_OHMS / (RATED_OHMS + 3 * WINDING_OHMS);
    assertEquals(expected, trial.read("weak", MeterFunction.VOLTS, "R", "C"), 0.1);
  }

  /**
   * 100 pF between the windings and a meter of 10 MΩ and 100 pF: an unbonded secondary floats some 28 V above ground.
   */
  @Test
  void unbondedSecondaryFloatsByTheCapacitanceBetweenWindings() {
    Trial trial = Trial.of(POINTS, SUPPLY, NEUTRAL, TRANSFORMER);
    double coupling = 2 * Math.PI * 60 * 100e-12;
    double meter = 2 * Math.PI * 60 * 100e-12;
    double expected = (120 - NO_LOAD_VOLTS) * coupling / Math.hypot(1e-7, coupling + meter);
    assertEquals(expected, trial.volts("C", "ground"), 0.1);
  }
}
