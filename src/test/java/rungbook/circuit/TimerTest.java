package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;
import rungbook.circuit.network.Past;
import rungbook.circuit.network.Samples;
import rungbook.system.BenchSystem;

/**
 * Delay on make and delay on break as their makers' sheets describe them (NEMA and IEC 61812-1 have the same two, from
 * memory): on make, the contact closes a time after the coil has power; on break, it opens a time after.
 */
class TimerTest {

  private static final String CALL = """
      ```controls
      call: off, on, at bench
      ```

      """;

  private static final String SUPPLY = """
      ```parts
      supply: supply, 24 V, 0.05 ohm, L1 to N
      bond: joint, N to ground
      """;

  private static final String LAMP = "lamp: load, 24 V, 5 W, A to N\n```\n\n```sights\nlit: at bench, when lamp on\n"
      + "```\n";

  /** A lamp behind one timer. */
  private static Walk timer(String delays) {
    return Walk.of(CALL + SUPPLY + "timer: state, when call on, " + delays + "\ncontact: contact, L1 to A, "
        + "closed when timer on\n" + LAMP);
  }

  private record Walk(Dictionary dictionary, CircuitState state) {

    static Walk of(String blocks) {
      var read = BenchSystem.read("L1 N A B", blocks);
      assertEquals(List.of(), read.problems());
      return new Walk(Dictionary.of(read.system(), new Samples(List.of(Draw.MIDDLE))),
          CircuitState.start(read.system().vocabulary()));
    }

    Walk call(String position) {
      return new Walk(dictionary, state.set("call", position).from(state, Set.of()));
    }

    Walk wait(int seconds) {
      return new Walk(dictionary, state.waited(seconds));
    }

    boolean isLit() {
      ReadingTable table = Whole.table(dictionary, state, List.of());
      return table.seen(0, 0, table.sights().indexOf("lit"));
    }

    double volts(String red, String black) {
      return Whole.table(dictionary, state, List.of(Leads.at("bench", MeterFunction.VOLTS, red, black)))
          .reading(0, 0, 0);
    }
  }

  @Test
  void delayOnMakeClosesAfterItsTime() {
    Walk called = timer("on after 5 min").call("on");
    assertFalse(called.isLit());
    assertFalse(called.wait(299).isLit());
    assertTrue(called.wait(300).isLit());
    assertFalse(called.wait(300).call("off").isLit(), "it opens at once");
  }

  @Test
  void delayOnBreakOpensAfterItsTime() {
    Walk over = timer("off after 90 s").call("on").call("off");
    assertTrue(over.isLit());
    assertTrue(over.wait(89).isLit());
    assertFalse(over.wait(90).isLit());
    assertTrue(timer("off after 90 s").call("on").isLit(), "it closes at once");
  }

  @Test
  void bothDelaysOfOneTimerRunEachInItsTurn() {
    Walk called = timer("on after 30 s, off after 90 s").call("on");
    assertFalse(called.isLit());
    Walk off = called.wait(30).call("off");
    assertTrue(off.wait(60).isLit());
    assertFalse(off.wait(90).isLit());
  }

  @Test
  void waitsAddUpWhileNothingStopsTheDelay() {
    Walk called = timer("on after 1 h").call("on").wait(1800);
    assertFalse(called.isLit());
    assertTrue(called.wait(1800).isLit());
    assertFalse(called.call("off").call("on").wait(1800).isLit(), "it begins anew");
  }

  @Test
  void aWaitGoesFromTheEndOfOneDelayToTheNext() {
    Walk called = Walk.of(CALL + SUPPLY + """
        first: state, when call on, on after 30 s
        second: state, when relay on, on after 60 s
        first contact: contact, L1 to B, closed when first on
        relay: coil, 24 V, 3 VA, B to N
        second contact: contact, L1 to A, closed when second on
        """ + LAMP).call("on");
    assertEquals(24, called.wait(30).volts("B", "N"), 0.1);
    assertFalse(called.wait(89).isLit());
    assertTrue(called.wait(90).isLit());
    assertTrue(called.wait(40).wait(50).isLit());
  }

  /** The compressor may start at once when power comes on, and then not before five minutes after it has stopped. */
  @Test
  void antiShortCycleDelayKeepsAContactorOut() {
    Walk running = Walk.of(CALL + SUPPLY + """
        anti-short-cycle delay: state, when not lamp on, on after 5 min
        thermostat: contact, L1 to B, closed when call on
        delay contact: contact, B to A, closed when anti-short-cycle delay on or lamp on
        """ + LAMP).call("on");
    assertTrue(running.isLit());
    Walk again = running.call("off").call("on");
    assertFalse(again.isLit());
    assertTrue(again.wait(300).isLit());
    assertTrue(running.call("off").wait(300).call("on").isLit());
  }

  @Test
  void everyDelayIsOverWhereAWalkBegins() {
    Walk start = timer("on after 24 h");
    assertFalse(start.isLit());
    assertTrue(new Walk(start.dictionary(), start.state().set("call", "on")).isLit());
    assertTrue(start.call("on").wait(Past.LONG).isLit());
  }

  @Test
  void timersThatStartEachOtherGiveNoSteadyReading() {
    Walk flasher = Walk.of(CALL + SUPPLY + """
        flasher: state, when call on and not lamp on, on after 1 s, off after 1 s
        contact: contact, L1 to A, closed when flasher on
        """ + LAMP).call("on");
    assertEquals(0, flasher.volts("A", "N"), 1e-9);
    assertEquals(Reading.UNSTEADY, flasher.wait(3600).volts("A", "N"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"when load on, on after 0 s | absurd-quantity",
      "when load on, off after 25 h | absurd-quantity", "when load on, on after 4 to 6 min | range-not-drawn",
      "set when load on, reset when not load on, on after 5 s | unknown-particular",
      "when load on, on after 5 days | unknown-particular", "when load on, on after 24 h | "})
  void impossibleDelaysAreProblems(String state, String code) {
    var problems = Trial.read("A C", "", "", "supply: supply, 24 V, 0.1 ohm, A to C", "bond: joint, C to ground",
        "load: load, 24 V, 5 VA, A to C", "timer: state, " + state).problems();
    assertEquals(code == null ? List.of() : List.of(code),
        problems.stream().map(problem -> problem.code().name()).toList());
  }
}
