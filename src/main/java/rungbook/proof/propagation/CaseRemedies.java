package rungbook.proof.propagation;

import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.RepairState;
import rungbook.system.remedy.Remedy;

/**
 * What takes the faults of each case away.
 *
 * @param byFault by the fault's key
 */
record CaseRemedies(Map<String, Remedy> byFault, Installations installations) {

  /** Whether it is known what takes each fault of a case away. */
  boolean areKnown(int caseNumber) {
    return byFault.keySet().containsAll(installations.faults(caseNumber));
  }

  /** Whether something was done that is meant to take a fault away. */
  boolean isRepair(int caseNumber, RepairState done) {
    return installations.faults(caseNumber).stream().anyMatch(fault -> done.isRepair(remedy(fault)));
  }

  /** The keys of the faults that are taken away. */
  Set<String> gone(int caseNumber, RepairState done) {
    return installations.faults(caseNumber).stream().filter(fault -> done.takesAway(remedy(fault)))
        .collect(Collectors.toUnmodifiableSet());
  }

  private Remedy remedy(String fault) {
    return Objects.requireNonNull(byFault.get(fault));
  }
}
