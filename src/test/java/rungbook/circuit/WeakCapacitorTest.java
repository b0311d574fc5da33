package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.circuit.network.Draw;

/**
 * A motor with a run capacitor, as the starter systems draw it. With |Z| = 60 Ω at power factor 0.6, the start winding
 * is 36 + j48 Ω; behind C at 60 Hz and 240 V it gets V = 240 · 60 / |36 + j(48 − 1/ωC)|, 158 V of 20 µF and 146 V of
 * 19 µF, and it is said to need 150 V.
 */
class WeakCapacitorTest {

  private static Trial weak(double percent) {
    return Trial.of(Draw.MIDDLE, "A R C S K",
        "running: at bench, when run winding on\nhumming: at bench, when run winding humming",
        "weak: weaken capacitor to " + percent + " %",
        "supply: supply, 240 V, 0.001 ohm, A to C", "bond: joint, C to ground", "hand switch: switch, A to R",
        "lead: wire, S to K", "capacitor: capacitor, S to C, 40 uF",
        "run winding: motor, 240 V, 14 A, 85 A locked, 0.85 pf, R to C, works above 180 V, only when start winding on",
        "start winding: motor, 240 V, 4 A, 0.6 pf, R to K, works above 150 V, drops out at 100 V");
  }

  /** From 50 % it starts; from 47.5 % down it hums on its locked current. */
  @ParameterizedTest
  @CsvSource({"99, true", "90, true", "75, true", "50, true", "47.5, false", "25, false"})
  void theMotorStartsWhileItsStartWindingGetsItsVolts(double percent, boolean starts) {
    assertEquals(starts, weak(percent).seenWith("weak", "running"));
    assertEquals(!starts, weak(percent).seenWith("weak", "humming"));
  }

  /** 40 µF and less, with the power off. */
  @ParameterizedTest
  @CsvSource({"90, 36", "75, 30", "62.5, 25", "50, 20"})
  void aMeterReadsTheMicrofaradsThatAreLeft(double percent, double microfarads) {
    Trial trial = weak(percent);
    Trial dead = trial.in(trial.start().isolate("hand switch").disconnect("lead"));
    assertEquals(microfarads, dead.read("weak", MeterFunction.MICROFARADS, "S", "C"), 1e-6);
  }

  /** Under load, µF = 10⁶ A / (2π · 60 V), which the trade rounds to 2652 A / V. */
  @ParameterizedTest
  @CsvSource({"90, 36", "75, 30", "50, 20"})
  void ampsAndVoltsUnderLoadGiveTheMicrofarads(double percent, double microfarads) {
    Trial trial = weak(percent);
    double amps = trial.read("weak", MeterFunction.AMPS, "S", "S");
    double volts = trial.read("weak", MeterFunction.VOLTS, "S", "C");
    assertEquals(microfarads, 2652 * amps / volts, 0.02);
  }
}
