package rungbook.proof;

/**
 * What a tree's circuit says of its steps without a proof.
 *
 * @param voltages the most that can be read at its checks
 * @param suspects the faults that can still be the cause
 */
public record CircuitFacts(HighestVoltages voltages, Suspects suspects) {

  /** Where there is no circuit, or none that can be solved. */
  public static CircuitFacts unknown() {
    return of(HighestVoltages.unknown());
  }

  /** Where nothing is known but voltages. */
  public static CircuitFacts of(HighestVoltages voltages) {
    return new CircuitFacts(voltages, Suspects.UNKNOWN);
  }
}
