package rungbook.pack.reading;

/** What a typed reading means; only the first three point to ways on. */
public enum Meaning {
  /** Inside the expected window: one way. */
  INSIDE("in"),
  /** Outside the expected window: one way. */
  OUTSIDE("out"),
  /** Within the meter's error of a limit between two ways: both of them. */
  NEAR("near"),
  /** No way takes it. */
  UNTAKEN("none"),
  /** A minus sign on a scale that has none. */
  MINUS("minus"),
  /** Outside what the meter can show. */
  NOT_SHOWN("off"),
  /** Higher than the circuit can give at these points. */
  IMPOSSIBLE("cannot"),
  /** Line voltage on control wires. */
  LINE_VOLTAGE("danger"),
  /** More volts or amps than the meter may read. */
  OVER_RANGE("high");

  private final String code;

  Meaning(String code) {
    this.code = code;
  }

  /** As the pack's script knows it. */
  public String code() {
    return code;
  }
}
