package rungbook.proof.demand;

import java.util.Optional;

/** What the meter shows over all installations. */
public sealed interface Shown {

  /**
   * Readings, without the meter's own error.
   *
   * @param low over the installations and the corners of their tolerances
   * @param usual the median of the installations
   * @param lowImpedance what the same leads usually show at low impedance, where the reading is a stray voltage
   * @param elsewhere why some installations show no number
   */
  record Amounts(double low, double usual, double high, Optional<Double> lowImpedance, Optional<NoReading> elsewhere)
      implements Shown {}

  /** No installation shows a number. */
  record Nothing(NoReading why) implements Shown {}

  /** Nobody asked for a reading. */
  record NotAsked() implements Shown {}
}
