package rungbook.system;

/** A quantity's tolerance interval; {@code low} equals {@code high} if the text gives one number. */
public record Interval(double low, double high) {

  public static Interval exactly(double value) {
    return new Interval(value, value);
  }

  public double middle() {
    return (low + high) / 2;
  }

  /** Linear from {@code low} at −1 to {@code high} at 1. */
  public double at(double draw) {
    return middle() + draw * (high - low) / 2;
  }
}
