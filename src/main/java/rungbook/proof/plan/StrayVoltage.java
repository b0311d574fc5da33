package rungbook.proof.plan;

/** Which voltages come through a capacitance, with no conductor between the point and a source. */
public final class StrayVoltage {

  private StrayVoltage() {}

  /**
   * A voltage is stray where the low-impedance mode takes away more than half of it (common practice, no source): its
   * source is behind more ohms than that mode's 3 kΩ, which no conductor and no load of a control circuit has.
   *
   * @param high what the meter shows at its high impedance, coded as in {@link rungbook.circuit.Reading}
   * @param low what it shows at low impedance
   */
  public static boolean isStray(double high, double low) {
    return high > 0 && low >= 0 && low < high / 2;
  }
}
