package rungbook.system;

/** A quantity of a load, and how it differs between installations. */
public sealed interface PartValue {

  /** A range in the text: the quantity has a draw of its own. {@code name} is its unit and words. */
  record Ranged(String name, Interval range) implements PartValue {}

  /** One number in the text: the quantity follows the tolerance of its part. */
  record Rated(double value) implements PartValue {}

  /** What a quantity that the text gives as an interval is. */
  static PartValue of(String name, Interval written) {
    return written.low() == written.high() ? new Rated(written.low()) : new Ranged(name, written);
  }
}
