package rungbook.circuit;

/** What the display of a meter shows, before its accuracy is taken into account. */
public sealed interface Reading {

  /** Volts, ohms, amps or microfarads, by {@link MeterFunction}. */
  record Steady(double value) implements Reading {}

  /** Why there is no number. */
  enum None implements Reading {
    /** Nothing ties the two leads together: whatever shows is not of the circuit. */
    FLOATING,
    /** The circuit does not settle: a contactor chatters. */
    UNSTEADY,
    /** A passive measurement on a circuit that is not dead. */
    LIVE,
    /** Beyond any range: an open circuit on the ohms scale. */
    OVERLOAD
  }

  /** In an array of readings, which are never negative: {@link None#FLOATING} and so on. */
  double FLOATING = -1;

  double UNSTEADY = -2;
  double LIVE = -3;
  double OVERLOAD = Double.POSITIVE_INFINITY;

  /** Reads a number as stored in an array. */
  static Reading of(double code) {
    if (code == OVERLOAD) {
      return None.OVERLOAD;
    }
    if (code >= 0) {
      return new Steady(code);
    }
    return code == FLOATING ? None.FLOATING : code == UNSTEADY ? None.UNSTEADY : None.LIVE;
  }

  /** The number as stored in an array. */
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
