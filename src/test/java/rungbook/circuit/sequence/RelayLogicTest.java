package rungbook.circuit.sequence;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitNetwork;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.FaultCase;
import rungbook.system.BenchSystem;
import rungbook.system.ControlSystem;

/** One round of the sequence of operation at a time. */
class RelayLogicTest {

  private static final ControlSystem SYSTEM = BenchSystem.read("L1 N A B D", """
      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      fuse: fuse, 3 A, L1 to A
      coil: coil, 24 V, 6 VA, A to N
      break contact: contact, A to B, closed when not coil on
      make contact: contact, A to D, closed when coil on
      idle lamp: load, 24 V, 5 W, B to N
      run lamp: load, 24 V, 5 W, D to N
      ```
      """).system();

  private static final CircuitState STATE = CircuitState.start(SYSTEM.vocabulary());
  private final RelayLogic logic = new RelayLogic(CircuitNetwork.of(SYSTEM));

  /** Enough for the coil to pull in; nothing on the lamps. */
  private static final byte[] PULL_IN = {3, 0, 0};

  private RelayState initial(boolean isBlown) {
    return logic.dropped(new boolean[] {isBlown}, STATE, FaultCase.HEALTHY);
  }

  private RelayState next(RelayState now, boolean isOverloaded) {
    return logic.next(now, PULL_IN, new boolean[] {isOverloaded}, STATE, FaultCase.HEALTHY);
  }

  @Test
  void breakContactsAreClosedFromTheStart() {
    assertArrayEquals(new boolean[] {true, false}, initial(false).closed);
  }

  @Test
  void coilThatPullsInMovesItsContacts() {
    RelayState next = next(initial(false), false);
    assertArrayEquals(new byte[] {RelayState.ON, RelayState.OFF, RelayState.OFF}, next.loads);
    assertArrayEquals(new boolean[] {false, true}, next.closed);
  }

  /** Or the coil would pull in at a voltage that the fuse has already taken away. */
  @Test
  void fuseOpensBeforeAnythingElseMoves() {
    RelayState next = next(initial(false), true);
    assertArrayEquals(new boolean[] {true}, next.blown);
    assertArrayEquals(new byte[] {RelayState.OFF, RelayState.OFF, RelayState.OFF}, next.loads);
    assertArrayEquals(new boolean[] {true, false}, next.closed);
  }

  /** Another supply may feed the coil. */
  @Test
  void fuseThatIsAlreadyOpenHoldsNothingUp() {
    RelayState next = next(initial(true), true);
    assertArrayEquals(new boolean[] {true}, next.blown);
    assertArrayEquals(new byte[] {RelayState.ON, RelayState.OFF, RelayState.OFF}, next.loads);
  }
}
