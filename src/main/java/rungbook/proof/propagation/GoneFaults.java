package rungbook.proof.propagation;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import rungbook.circuit.network.CircuitState;
import rungbook.proof.plan.Installations;

/** What is observed while a fault is gone: the healthy system, with the fuses open that the fault has blown. */
final class GoneFaults {

  private final Installations installations;
  private final ObservedStates observed;
  private final Map<Key, int[]> cases = new HashMap<>();

  private record Key(int caseNumber, Set<String> replaced) {}

  GoneFaults(Installations installations, ObservedStates observed) {
    this.installations = installations;
    this.observed = observed;
  }

  Installations.Observations observations(int caseNumber, CircuitState state) {
    return new RepairedObservations(observed.in(state), as(caseNumber, state));
  }

  /** The case as which each sample reads. */
  int[] as(int caseNumber, CircuitState state) {
    return cases.computeIfAbsent(new Key(caseNumber, state.replaced()),
        key -> installations.repaired(caseNumber, Set.copyOf(installations.faults(caseNumber)), key.replaced()));
  }
}
