package rungbook.proof.propagation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungbook.circuit.network.CircuitState;
import rungbook.proof.plan.Installations;

/** What is observed while a fault is gone: the healthy system, with the fuses open that the fault has blown. */
final class GoneFaults {

  private final Installations installations;
  private final ObservedStates observed;
  private final Map<List<Object>, int[]> cases = new HashMap<>();

  GoneFaults(Installations installations, ObservedStates observed) {
    this.installations = installations;
    this.observed = observed;
  }

  Installations.Observations observations(int caseNumber, CircuitState state) {
    return new RepairedObservations(observed.in(state), as(caseNumber, state));
  }

  /** The case as which each sample reads. */
  int[] as(int caseNumber, CircuitState state) {
    return cases.computeIfAbsent(List.of(caseNumber, state.replaced()),
        key -> installations.repaired(caseNumber, Set.copyOf(installations.faults(caseNumber)), state.replaced()));
  }
}
