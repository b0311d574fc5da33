package rungbook.circuit.sequence;

import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.solver.TechnicianOverrides;

/** A state in which a technician has left the system, with what it does to each branch. */
public record EquipmentState(CircuitState state, TechnicianOverrides overrides) {

  public static EquipmentState of(CircuitNetwork network, CircuitState state) {
    return new EquipmentState(state, new TechnicianOverrides(network, state));
  }

  /** This state with other positions of the selectors, which change no branch by themselves. */
  public EquipmentState at(CircuitState positions) {
    return new EquipmentState(positions, overrides);
  }
}
