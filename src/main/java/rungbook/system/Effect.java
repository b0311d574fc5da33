package rungbook.system;

/**
 * What a fault does to the circuit. A {@code branch} or {@code part} is a key. Each installation has its own value out
 * of an interval.
 */
public sealed interface Effect {

  /** Whether it changes nothing in the circuit, only what is seen or measured outside it. */
  default boolean isOutsideCircuit() {
    return this instanceof Show || this instanceof Shift;
  }

  /** An open branch. */
  record Open(String branch) implements Effect {}

  /** Ohms across a branch. */
  record Bridge(String branch, Interval ohms) implements Effect {}

  /** A connection between two terminals. */
  record Join(Terminal a, Terminal b, Interval ohms) implements Effect {}

  /** Ohms in series with a branch: a bad connection. */
  record Raise(String branch, Interval ohms) implements Effect {}

  /** A contact or switch that is stuck. */
  record Hold(String branch, boolean closed) implements Effect {}

  /** A contact or switch that is stuck from the moment on that a condition holds: a limit that trips. */
  record Trip(String branch, boolean closed, Condition when) implements Effect {}

  /**
   * A sight that is seen, or not seen, while a condition holds, whatever the system says.
   *
   * @param sight its key, or that of a value with its sight
   */
  record Show(String sight, boolean seen, Condition when) implements Effect {}

  /**
   * A quantity outside the circuit that is in another range while a condition holds, whatever the system says.
   *
   * @param quantity its key
   */
  record Shift(String quantity, Interval range, Condition when) implements Effect {}

  /** A load or state that never comes on; a load still draws its inrush current. */
  record Stop(String part) implements Effect {}

  /** Two conductors that are swapped at their second end. */
  record Cross(String branch, String other) implements Effect {}

  /** A transformer whose winding resistance is multiplied. */
  record Weaken(String part, Interval times) implements Effect {}

  /** A capacitor that has only a share of its capacitance. */
  record Derate(String branch, Interval share) implements Effect {}

  /** A load whose running current is multiplied. */
  record Overload(String part, Interval times) implements Effect {}

  /** A load that needs other volts to pull in or start. */
  record Stiffen(String part, Interval volts) implements Effect {}

  /** A transformer connected by the wrong primary lead. */
  record Tap(String part, double primaryVolts) implements Effect {}

  /** A supply with other volts. */
  record Lower(String part, Interval volts) implements Effect {}
}
