package rungbook.system;

import java.util.function.DoubleUnaryOperator;

/** A quantity's tolerance interval; {@code low} equals {@code high} if the text gives one number. */
public record Interval(double low, double high) {

  public static Interval exactly(double value) {
    return new Interval(value, value);
  }

  /** From {@code share} below a value to as much above it. */
  public static Interval around(double value, double share) {
    return new Interval(value * (1 - share), value * (1 + share));
  }

  /** Both ends put through a linear function that rises. */
  public Interval map(DoubleUnaryOperator linear) {
    return new Interval(linear.applyAsDouble(low), linear.applyAsDouble(high));
  }

  public double middle() {
    return (low + high) / 2;
  }

  /** Linear from {@code low} at −1 to {@code high} at 1. */
  public double at(double draw) {
    return middle() + draw * (high - low) / 2;
  }
}
