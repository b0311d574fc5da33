package rungbook.circuit;

/**
 * What a meter displays, without measurement error, as one number: volts, ohms, amps or microfarads by
 * {@link MeterFunction}, or a code that says why there is none. A real reading is never negative.
 */
public final class Reading {

  /** No connection between the two leads, so the reading says nothing about the circuit. */
  public static final double FLOATING = -1;

  /** The circuit has no steady state: a contactor chatters. */
  public static final double UNSTEADY = -2;

  /** A passive measurement on a live circuit. */
  public static final double LIVE = -3;

  /** Beyond any range: an open circuit on the ohms function. */
  public static final double OVERLOAD = Double.POSITIVE_INFINITY;

  private Reading() {}

  static boolean isNumber(double reading) {
    return reading >= 0 && reading < OVERLOAD;
  }
}
