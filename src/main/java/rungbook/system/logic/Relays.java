package rungbook.system.logic;

import java.util.Arrays;

/** What is on and what is closed in one round. */
final class Relays {

  final boolean[] fed;
  final boolean[] on;
  final boolean[] states;
  final int[] rounds;
  final boolean[] closed;

  /**
   * @param fed whether each load has voltage
   * @param on whether each load works
   * @param rounds for which each state's condition has held
   */
  private Relays(boolean[] fed, boolean[] on, boolean[] states, int[] rounds, boolean[] closed) {
    this.fed = fed;
    this.on = on;
    this.states = states;
    this.rounds = rounds;
    this.closed = closed;
  }

  static Relays off(int loads, int states, int contacts) {
    return new Relays(new boolean[loads], new boolean[loads], new boolean[states], new int[states],
        new boolean[contacts]);
  }

  Relays copy() {
    return new Relays(fed.clone(), on.clone(), states.clone(), rounds.clone(), closed.clone());
  }

  boolean isLike(Relays other) {
    return Arrays.equals(fed, other.fed) && Arrays.equals(on, other.on) && Arrays.equals(states, other.states)
        && Arrays.equals(rounds, other.rounds) && Arrays.equals(closed, other.closed);
  }
}
