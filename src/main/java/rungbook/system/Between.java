package rungbook.system;

/** A quantity and its spread; both ends alike where the text gives one number. */
public record Between(double low, double high) {

  public static Between exactly(double value) {
    return new Between(value, value);
  }

  public double middle() {
    return (low + high) / 2;
  }

  /** From {@code low} at −1 to {@code high} at 1. */
  public double at(double draw) {
    return middle() + draw * (high - low) / 2;
  }
}
