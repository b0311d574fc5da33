package rungbook.proof.report;

import java.util.List;

/**
 * What becomes of two faults that come together. Shares are of the installations that show the complaint.
 *
 * @param faults as the system writes them
 * @param likelihood that both give this complaint, against the other cases
 * @param ends where the diagnosis ends; found is a finding that names either
 * @param both what ends "repaired and proved" with both faults gone
 * @param noticed what does not end so after the right repair of the first that is named
 * @param missed what ends "repaired and proved" with the second still there
 * @param missedAfter the findings after which that happens, by step
 */
public record PairOutcome(List<String> faults, double likelihood, EndShares ends, double both, double noticed,
    double missed, List<Missed> missedAfter) {

  public PairOutcome {
    faults = List.copyOf(faults);
    missedAfter = List.copyOf(missedAfter);
  }

  /**
   * A finding after which the second fault is not noticed.
   *
   * @param finding its step
   * @param share what ends "repaired and proved" with it, of all that is repaired after this finding
   * @param isKnown whether the circuit models every check on the way
   */
  public record Missed(int finding, int caseNumber, double share, boolean isKnown) {}

  public String name() {
    return String.join(" and ", faults);
  }
}
