package rungbook.circuit;

/** What a meter displays, without measurement error. */
public sealed interface Reading {

  /** Volts, ohms, amps or microfarads, by {@link MeterFunction}. */
  record Steady(double value) implements Reading {}

  /** The reasons for having no number. */
  enum None implements Reading {
    /** No connection between the two leads, so the reading says nothing about the circuit. */
    FLOATING,
    /** The circuit has no steady state: a contactor chatters. */
    UNSTEADY,
    /** A passive measurement on a live circuit. */
    LIVE,
    /** Beyond any range: an open circuit on the ohms function. */
    OVERLOAD
  }

  /** Code of {@link None#FLOATING} in an array of readings; real readings are never negative. */
  double FLOATING = -1;

  double UNSTEADY = -2;
  double LIVE = -3;
  double OVERLOAD = Double.POSITIVE_INFINITY;

  /** Decodes a number stored in an array. */
  static Reading of(double code) {
    if (code == OVERLOAD) {
      return None.OVERLOAD;
    }
    if (code >= 0) {
      return new Steady(code);
    }
    return code == FLOATING ? None.FLOATING : code == UNSTEADY ? None.UNSTEADY : None.LIVE;
  }

  /** The number that encodes this reading in an array. */
  default double code() {
    if (this instanceof Steady steady) {
      return steady.value();
    }
    return switch ((None) this) {
      case FLOATING -> FLOATING;
      case UNSTEADY -> UNSTEADY;
      case LIVE -> LIVE;
      case OVERLOAD -> OVERLOAD;
    };
  }
}
