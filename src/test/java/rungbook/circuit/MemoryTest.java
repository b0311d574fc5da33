package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Samples;
import rungbook.circuit.sequence.HoldingCircuits;
import rungbook.system.BenchSystem;

/**
 * What equipment remembers from one setting to the next, on the circuits with which the trade teaches it. The circuits
 * and what they do are those of any textbook on motor control or HVAC controls, from memory: two-wire and three-wire
 * control with their undervoltage release and undervoltage protection, and the lockout relay with a coil of high
 * impedance that older compressors have.
 */
class MemoryTest {

  /** Start and stop buttons, and a contactor that seals itself in. */
  static final String THREE_WIRE = """
      ```controls
      main: isolates power, at bench
      start button: released, pressed, at bench
      stop button: released, pressed, at bench
      ```

      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      main: switch, L1 to A
      stop button: switch, A to B, closed when stop button released
      start button: switch, B to D, closed when start button pressed
      seal-in contact: contact, B to D, closed when contactor on
      contactor: coil, 24 V, 7.5 VA, 30 VA inrush, D to N
      ```

      ```sights
      contactor pulled in: at bench, when contactor on
      ```

      ```faults
      seal-in contact burned: open seal-in contact
      seal-in contact welded: hold seal-in contact closed
      ```
      """;

  /** A maintained contact, as that of a thermostat. */
  static final String TWO_WIRE = """
      ```controls
      main: isolates power, at bench
      thermostat: off, cooling, at bench
      ```

      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      main: switch, L1 to A
      thermostat: switch, A to D, closed when thermostat cooling
      contactor: coil, 24 V, 7.5 VA, 30 VA inrush, D to N
      ```

      ```sights
      contactor pulled in: at bench, when contactor on
      ```
      """;

  /**
   * The coil of the lockout relay lies across its own break contact and the pressure switch, in series with the
   * contactor. While they are closed it has no voltage. When the pressure switch opens, it takes nearly all of the
   * voltage, and the contactor the rest.
   */
  static final String LOCKOUT = """
      ```controls
      thermostat: off, cooling, at bench
      pressure: normal, high, at bench
      ```

      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      thermostat: switch, L1 to Y, closed when thermostat cooling
      lockout contact: contact, Y to A, closed when not lockout relay on
      high pressure switch: switch, A to D, closed when pressure normal
      lockout relay: coil, 24 V, 0.6 VA, Y to D
      contactor: coil, 24 V, 7.5 VA, 30 VA inrush, D to N
      ```

      ```sights
      contactor pulled in: at bench, when contactor on
      locked out: at bench, when lockout relay on
      ```
      """;

  private static final String FUSED = """
      ```controls
      thermostat: off, cooling, at bench
      ```

      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      fuse: fuse, 3 A, L1 to A
      thermostat: switch, A to D, closed when thermostat cooling
      contactor: coil, 24 V, 7.5 VA, 30 VA inrush, D to N
      ```

      ```faults
      coil shorted: short contactor
      ```
      """;

  private record Walk(Dictionary dictionary, CircuitState state) {

    static Walk of(String blocks) {
      var read = BenchSystem.read("L1 N Y A B D", blocks);
      assertEquals(List.of(), read.problems());
      return new Walk(Dictionary.of(read.system(), new Samples(List.of(Draw.MIDDLE))),
          CircuitState.start(read.system().vocabulary()));
    }

    Walk set(String control, String position) {
      return new Walk(dictionary, state.set(control, position).from(state, Set.of()));
    }

    Walk off(String control) {
      return new Walk(dictionary, state.isolate(control).from(state, Set.of()));
    }

    Walk replaced(String fuse) {
      return new Walk(dictionary, state.replace(fuse).from(state, Set.of(fuse)));
    }

    double volts(String fault, String red, String black) {
      return Whole.table(dictionary, state, List.of(Leads.at("bench", MeterFunction.VOLTS, red, black)))
          .reading(dictionary.cases().indexOf(fault), 0, 0);
    }

    Walk powered() {
      return new Walk(dictionary, state.withPower().from(state, Set.of()));
    }

    boolean sees(String sight) {
      return sees("healthy", sight);
    }

    boolean sees(String fault, String sight) {
      ReadingTable table = Whole.table(dictionary, state, List.of());
      return table.seen(dictionary.cases().indexOf(fault), 0, table.sights().indexOf(sight));
    }

    boolean runs() {
      return sees("contactor pulled in");
    }

    boolean remembers() {
      return HoldingCircuits.anyIn(dictionary.network());
    }
  }

  @Test
  void threeWireControlSealsInUntilItIsStopped() {
    Walk started = Walk.of(THREE_WIRE).set("start button", "pressed").set("start button", "released");
    assertTrue(started.remembers());
    assertTrue(started.runs());
    Walk stopped = started.set("stop button", "pressed");
    assertFalse(stopped.runs());
    assertFalse(stopped.set("stop button", "released").runs());
  }

  /** NEMA calls it undervoltage protection: after a power failure nothing starts by itself. */
  @Test
  void threeWireControlStaysOffAfterAPowerFailure() {
    Walk started = Walk.of(THREE_WIRE).set("start button", "pressed").set("start button", "released");
    assertFalse(started.off("main").runs());
    assertFalse(started.off("main").powered().runs());
  }

  @Test
  void aBurnedSealInContactRunsOnlyWhileTheButtonIsPressed() {
    Walk pressed = Walk.of(THREE_WIRE).set("start button", "pressed");
    assertTrue(pressed.sees("seal in contact burned", "contactor pulled in"));
    assertFalse(pressed.set("start button", "released").sees("seal in contact burned", "contactor pulled in"));
    Walk stopped = pressed.set("stop button", "pressed").set("start button", "released");
    assertTrue(stopped.set("stop button", "released").sees("seal in contact welded", "contactor pulled in"));
  }

  /** Undervoltage release: it comes back with the power. */
  @Test
  void twoWireControlComesBackAfterAPowerFailure() {
    Walk called = Walk.of(TWO_WIRE).set("thermostat", "cooling");
    assertFalse(called.remembers());
    assertFalse(called.off("main").runs());
    assertTrue(called.off("main").powered().runs());
  }

  @Test
  void theLockoutRelayHoldsUntilTheThermostatIsTurnedOff() {
    Walk running = Walk.of(LOCKOUT).set("thermostat", "cooling");
    assertTrue(running.remembers());
    assertTrue(running.runs());
    Walk tripped = running.set("pressure", "high");
    assertFalse(tripped.runs());
    assertTrue(tripped.sees("locked out"));
    Walk normal = tripped.set("pressure", "normal");
    assertTrue(normal.sees("locked out"), "the switch has closed again");
    assertFalse(normal.runs());
    Walk reset = normal.set("thermostat", "off");
    assertFalse(reset.sees("locked out"));
    assertTrue(reset.set("thermostat", "cooling").runs());
  }

  /** In the field as on the bench: a new fuse on a short is good until the next call, and open from then on. */
  @Test
  void aNewFuseThatHasOpenedStaysOpen() {
    Walk replaced = Walk.of(FUSED).replaced("fuse");
    assertEquals(24, replaced.volts("coil shorted", "A", "N"), 0.1);
    Walk called = replaced.set("thermostat", "cooling");
    assertEquals(0, called.volts("coil shorted", "A", "N"), 0.1);
    assertEquals(24, called.volts("healthy", "A", "N"), 0.1);
    Walk off = called.set("thermostat", "off");
    assertEquals(Reading.FLOATING, off.volts("coil shorted", "A", "N"), "nothing is between the leads");
    assertEquals(24, off.replaced("fuse").volts("coil shorted", "A", "N"), 0.1);
  }

  /** A limit with manual reset stays open when it has cooled down, until its button is pressed. */
  @Test
  void aManualResetIsAControlThatResetsAState() {
    Walk normal = Walk.of("""
        ```controls
        temperature: normal, high, at bench
        limit reset: released, pressed, at bench
        ```

        ```parts
        supply: supply, 24 V, 0.05 ohm, L1 to N
        bond: joint, N to ground
        limit tripped: state, set when temperature high, reset when limit reset pressed
        limit: switch, L1 to D, closed when not limit tripped
        contactor: coil, 24 V, 7.5 VA, D to N
        ```

        ```sights
        contactor pulled in: at bench, when contactor on
        ```
        """);
    assertTrue(normal.runs());
    Walk cooled = normal.set("temperature", "high").set("temperature", "normal");
    assertFalse(cooled.runs());
    assertTrue(cooled.set("limit reset", "pressed").set("limit reset", "released").runs());
  }

  /** In every step another state: what was done first still counts. */
  @Test
  void aSealInContactHoldsOnALongWalk() {
    String controls = IntStream.range(0, 12).mapToObj(i -> "lever " + i + ": left, right, at bench\n")
        .collect(Collectors.joining());
    String levers = IntStream.range(0, 12).mapToObj(i -> "lever " + i + " left").collect(Collectors.joining(" or "));
    Walk walk = Walk.of(THREE_WIRE.replace("start button: rel", controls + "start button: rel")
        .replace("supply:", "levers: state, when " + levers + "\nsupply:"))
        .set("start button", "pressed").set("start button", "released");
    for (int step = 1; step < 3000; step++) {
      int lever = Integer.numberOfTrailingZeros(step); // a Gray code comes to each state once
      walk = walk.set("lever " + lever, (step >> (lever + 1)) % 2 == 0 ? "right" : "left");
    }
    assertTrue(walk.runs());
    assertFalse(walk.set("stop button", "pressed").runs());
  }

  @Test
  void aLatchThatNothingResetsIsAProblem() {
    var problems = Trial.read("A C", "", "", "supply: supply, 24 V, 0.1 ohm, A to C", "bond: joint, C to ground",
        "load: load, 24 V, 5 VA, A to C", "latch: state, set when load on").problems();
    assertEquals(List.of("part-lacks"), problems.stream().map(problem -> problem.code().name()).toList());
  }

  /** A start in the last state finds everything as it was left: a walk that stands still changes nothing. */
  @Test
  void aStateThatComesFromItselfIsTheSame() {
    Walk locked = Walk.of(LOCKOUT).set("thermostat", "cooling").set("pressure", "high").set("pressure", "normal");
    Walk again = new Walk(locked.dictionary(), locked.state().from(locked.state(), Set.of()));
    var probes = List.of(Leads.at("bench", MeterFunction.VOLTS, "D", "N"),
        Leads.at("bench", MeterFunction.VOLTS, "Y", "D"));
    for (int probe = 0; probe < probes.size(); probe++) {
      assertEquals(Whole.table(locked.dictionary(), locked.state(), probes).reading(0, 0, probe),
          Whole.table(again.dictionary(), again.state(), probes).reading(0, 0, probe));
    }
  }
}
