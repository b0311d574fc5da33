package rungbook.system;

/** What a fault does to the circuit. A {@code limb} or {@code part} is the key of one. */
public sealed interface Effect {

  /** No current passes. */
  record Open(String limb) implements Effect {}

  /** Bridged within, by a few hundredths of an ohm or as many as the text says. */
  record Bridge(String limb, double ohms) implements Effect {}

  /** Two terminals touch. */
  record Join(Terminal a, Terminal b, double ohms) implements Effect {}

  /** A bad connection in series. */
  record Raise(String limb, double ohms) implements Effect {}

  /** A contact or switch that does not move. */
  record Hold(String limb, boolean closed) implements Effect {}

  /** A board or state that never comes on, though it draws what it drew. */
  record Stop(String part) implements Effect {}

  /** Two conductors changed over at their second end. */
  record Cross(String limb, String other) implements Effect {}

  /** A transformer whose windings add so many times their resistance. */
  record Weaken(String part, double times) implements Effect {}

  /** A transformer connected by the wrong lead. */
  record Tap(String part, double primaryVolts) implements Effect {}

  /** A supply outside its spread. */
  record Lower(String part, Interval volts) implements Effect {}
}
