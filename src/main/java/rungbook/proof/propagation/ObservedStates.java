package rungbook.proof.propagation;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import rungbook.circuit.network.CircuitState;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.StateEnumeration;

/** The observations in each state that a tree meets; asked for when first needed, and once. */
final class ObservedStates {

  private final Installations installations;
  private final StateEnumeration states;
  private final Map<CircuitState, Installations.Observations> byState = new HashMap<>();

  ObservedStates(Installations installations, StateEnumeration states) {
    this.installations = installations;
    this.states = states;
  }

  Installations.Observations in(CircuitState state) {
    return byState.computeIfAbsent(state, one -> installations.in(one, states.probes(one.alone())));
  }

  /** Says early what is read in a state later on, so that how it is left there is found with it. */
  void expect(CircuitState state, BitSet cases) {
    if (installations.memory() != Installations.Memory.NOTHING && states.isRead(state)) {
      cases.set(0);
      in(state).expect(cases);
    }
  }

  /** The observations where cases arrive together; the healthy system is always asked for. */
  Installations.Observations in(SituationNode node) {
    Installations.Observations observations = in(node.situation.state());
    BitSet cases = node.cases();
    cases.set(0);
    observations.expect(cases);
    return observations;
  }
}
