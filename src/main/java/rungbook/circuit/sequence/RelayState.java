package rungbook.circuit.sequence;

import java.util.Arrays;

/**
 * The state of every load, fuse, board state and contact in one round. If the next state equals this one, the circuit
 * is in steady state.
 */
public final class RelayState {

  static final byte OFF = 0;
  static final byte HUMMING = 1;
  static final byte ON = 2;

  final byte[] loads;
  public final boolean[] blown;
  final boolean[] states;
  final byte[] rounds;
  final boolean[] closed;

  RelayState(byte[] loads, boolean[] blown, boolean[] states, byte[] rounds, boolean[] closed) {
    this.loads = loads;
    this.blown = blown;
    this.states = states;
    this.rounds = rounds;
    this.closed = closed;
  }

  RelayState copy() {
    return new RelayState(loads.clone(), blown.clone(), states.clone(), rounds.clone(), closed.clone());
  }

  RelayState withFuses(boolean[] open) {
    return new RelayState(loads.clone(), open, states.clone(), rounds.clone(), closed.clone());
  }

  @Override
  public boolean equals(Object other) {
    return this == other || (other instanceof RelayState s && Arrays.deepEquals(parts(), s.parts()));
  }

  @Override
  public int hashCode() {
    return Arrays.deepHashCode(parts());
  }

  private Object[] parts() {
    return new Object[] {loads, blown, states, rounds, closed};
  }
}
