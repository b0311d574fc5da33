package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Past;
import rungbook.circuit.network.Samples;
import rungbook.system.BenchSystem;

/** A rollout switch with a button (ANSI Z21.47 asks for a manual reset, from memory), and what it does in a furnace. */
class ManualResetTest {

  private static final String FURNACE = """
      ```controls
      call: off, heating, at bench
      room: cool, hot, at bench
      ```

      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      thermostat: contact, L1 to A, closed when call heating
      rollout switch: switch, A to B, L1 to D, closed when room cool, manual reset
      gas valve: load, 24 V, 10 VA, B to N
      lamp: load, 24 V, 2 W, D to N
      ```

      ```sights
      flame: at bench, when gas valve on
      lit: at bench, when lamp on
      ```

      ```faults
      vent blocked: in vent, hold rollout switch A open when gas valve on
      rollout switch stuck: hold rollout switch A closed
      ```
      """;

  private record Walk(Dictionary dictionary, CircuitState state) {

    static Walk start() {
      var read = BenchSystem.read("L1 N A B D", FURNACE);
      assertEquals(List.of(), read.problems());
      return new Walk(Dictionary.of(read.system(), new Samples(List.of(Draw.MIDDLE))),
          CircuitState.start(read.system().vocabulary()));
    }

    Walk set(String control, String position) {
      return new Walk(dictionary, state.set(control, position).from(state, Set.of()));
    }

    Walk reset() {
      return new Walk(dictionary, state.replace("rollout switch").from(state, Set.of("rollout switch")));
    }

    /** The fault is taken away. */
    Walk repaired(String fault) {
      return new Walk(dictionary, state.with(new Past(state, Set.of(), 0, Optional.of(fault))));
    }

    boolean sees(String fault, String sight) {
      ReadingTable table = Whole.table(dictionary, state, List.of());
      return table.seen(dictionary.cases().indexOf(fault), 0, table.sights().indexOf(sight));
    }
  }

  @Test
  void staysOpenUntilItIsReset() {
    Walk burning = Walk.start().set("call", "heating");
    assertTrue(burning.sees("healthy", "flame"));
    Walk cooled = burning.set("room", "hot").set("room", "cool");
    assertFalse(cooled.sees("healthy", "flame"));
    assertFalse(cooled.set("call", "off").set("call", "heating").sees("healthy", "flame"));
    assertTrue(cooled.reset().sees("healthy", "flame"));
  }

  @Test
  void opensAgainWhileItsCauseIsThere() {
    Walk hot = Walk.start().set("call", "heating").set("room", "hot");
    assertFalse(hot.reset().sees("healthy", "flame"));
    assertFalse(hot.reset().set("room", "cool").sees("healthy", "flame"));
  }

  /** No call at the thermostat when the technician comes, but there was one before. */
  @Test
  void aFaultHasTrippedItBeforeTheTechnicianArrives() {
    Walk start = Walk.start();
    assertEquals(Set.of("rollout switch"), start.dictionary().opened(1, 0));
    assertFalse(start.sees("vent blocked", "lit"), "both limbs are open");
    assertTrue(start.reset().sees("vent blocked", "lit"));
    assertFalse(start.reset().set("call", "heating").sees("vent blocked", "lit"));
    assertTrue(start.sees("healthy", "lit"));
  }

  @Test
  void aRepairOfTheCauseLeavesItOpen() {
    Walk repaired = Walk.start().repaired("vent blocked");
    assertFalse(repaired.sees("healthy", "lit"));
    assertFalse(repaired.set("call", "heating").sees("healthy", "flame"));
    assertTrue(repaired.reset().set("call", "heating").sees("healthy", "flame"));
    assertTrue(repaired.set("call", "heating").reset().sees("healthy", "flame"));
  }

  @Test
  void aContactThatIsStuckClosedDoesNotOpen() {
    Walk hot = Walk.start().set("call", "heating").set("room", "hot");
    assertTrue(hot.sees("rollout switch stuck", "flame"));
    assertFalse(hot.sees("rollout switch stuck", "lit"));
  }
}
