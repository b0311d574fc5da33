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

  /** What stays open once it has opened: fuses and breakers, then switches with manual reset. */
  public final boolean[] blown;

  final boolean[] states;
  final byte[] rounds;
  final boolean[] closed;

  /** For how many seconds the condition of each state has differed from it; negative where it does not. */
  final int[] waited;

  /** Seconds that somebody still waits. */
  final int waitLeft;

  private int hash;

  RelayState(byte[] loads, boolean[] blown, boolean[] states, byte[] rounds, boolean[] closed, int[] waited,
      int waitLeft) {
    this.loads = loads;
    this.blown = blown;
    this.states = states;
    this.rounds = rounds;
    this.closed = closed;
    this.waited = waited;
    this.waitLeft = waitLeft;
  }

  RelayState copy() {
    return waiting(waitLeft);
  }

  RelayState withFuses(boolean[] open) {
    return new RelayState(loads.clone(), open, states.clone(), rounds.clone(), closed.clone(), waited.clone(),
        waitLeft);
  }

  /** A copy that waits so many seconds. */
  RelayState waiting(int seconds) {
    return new RelayState(loads.clone(), blown.clone(), states.clone(), rounds.clone(), closed.clone(), waited.clone(),
        seconds);
  }

  /** These relays with the wait over. */
  RelayState over() {
    return waitLeft == 0 ? this : waiting(0);
  }

  @Override
  public boolean equals(Object other) {
    return this == other || (other instanceof RelayState s && waitLeft == s.waitLeft && Arrays.equals(loads, s.loads)
        && Arrays.equals(closed, s.closed) && Arrays.equals(states, s.states) && Arrays.equals(rounds, s.rounds)
        && Arrays.equals(blown, s.blown) && Arrays.equals(waited, s.waited));
  }

  /** Known once nothing changes the arrays anymore: one state stands for hundreds of samples. */
  @Override
  public int hashCode() {
    if (hash == 0) {
      hash = hashOfArrays();
    }
    return hash;
  }

  private int hashOfArrays() {
    int sum = 31 * Arrays.hashCode(loads) + Arrays.hashCode(closed);
    sum = 31 * sum + Arrays.hashCode(states);
    sum = 31 * sum + Arrays.hashCode(rounds);
    sum = 31 * sum + Arrays.hashCode(blown);
    return 31 * (31 * sum + Arrays.hashCode(waited)) + waitLeft;
  }
}
