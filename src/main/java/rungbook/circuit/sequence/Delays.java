package rungbook.circuit.sequence;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import rungbook.circuit.network.Past;
import rungbook.system.Part;

/**
 * States that come on, or go off, some time after their condition. While a circuit settles no time passes; once it has
 * settled, a wait goes on to the end of the next delay, the circuit settles anew, and so on until the wait is over.
 */
final class Delays {

  /** The condition of a state does not differ from it. */
  private static final int IDLE = -1;

  private final List<Part.State> states;
  private final int[] timed;

  Delays(List<Part.State> states) {
    this.states = states;
    timed = IntStream.range(0, states.size()).filter(i -> states.get(i).delay().isPresent()).toArray();
  }

  boolean any() {
    return timed.length > 0;
  }

  /** Where power has come on long ago, every delay has run out. */
  int waitOfStart() {
    return any() ? Past.LONG : 0;
  }

  /** How long the condition of each state has differed from it; nothing where no state has a delay. */
  int[] none() {
    int[] waited = new int[any() ? states.size() : 0];
    Arrays.fill(waited, IDLE);
    return waited;
  }

  boolean isTimed(int state) {
    return states.get(state).delay().isPresent();
  }

  /** @param set whether the state's condition holds */
  void move(int state, boolean set, RelayState next) {
    int waited = Math.max(0, next.waited[state]);
    boolean isRunning = set != next.states[state] && waited < seconds(state, set);
    next.waited[state] = isRunning ? waited : IDLE;
    next.states[state] = isRunning ? !set : set;
  }

  private int seconds(int state, boolean set) {
    Part.Delay delay = states.get(state).delay().orElseThrow();
    return set ? delay.onSeconds() : delay.offSeconds();
  }

  /**
   * The same relays at the end of the next delay, or of the wait.
   *
   * @param settled relays that move no more by themselves
   */
  RelayState later(RelayState settled, ConditionAt condition) {
    int[] running = IntStream.of(timed).filter(i -> condition.of(i) != settled.states[i]).toArray();
    if (running.length == 0) {
      return settled.over();
    }
    int passing = IntStream.of(running).map(i -> seconds(i, condition.of(i)) - settled.waited[i]).min().orElseThrow();
    int seconds = Math.min(passing, settled.waitLeft);
    RelayState later = settled.waiting(left(settled.waitLeft, seconds));
    for (int i : running) {
      later.waited[i] += seconds;
    }
    return later;
  }

  private static int left(int wait, int passed) {
    return wait == Past.LONG ? wait : wait - passed;
  }

  /** Whether a timer runs in one state, or is another than in the other. */
  boolean isOtherwise(RelayState running, RelayState over) {
    return IntStream.of(timed).anyMatch(i -> running.waited[i] != IDLE || running.states[i] != over.states[i]);
  }

  /** Whether the condition of a state, by its number, holds. */
  @FunctionalInterface
  interface ConditionAt {
    boolean of(int state);
  }
}
