package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.CircuitState;
import rungbook.circuit.network.Draw;

/** What faults do while conditions hold, on a lamp behind a contact that a call closes. */
class ConditionalEffectsTest {

  private static final String[] PARTS = {"supply: supply, 24 V, 0.1 ohm, R to C", "hand switch: switch, R to A",
      "limit: contact, A to B, closed when not never", "lamp: load, 24 V, 6 VA, B to C",
      "never: state, when hand switch open"};

  private static final String SIGHTS = """
      lit: at bench, when lamp on
      light: at bench, off when not lamp on, steady when lamp on, code
      dirt: at bench
      flow: at bench
      """;

  private static Trial trial(String fault) {
    return Trial.of(Draw.MIDDLE, "R C A B", SIGHTS, "bad: " + fault, PARTS);
  }

  private static boolean seen(String fault, String sight) {
    return trial(fault).seenWith("bad", sight);
  }

  /** The lamp comes on, the limit opens, and the lamp that is then off does not close it again. */
  @Test
  void aTripHolds() {
    assertFalse(seen("hold limit open when lamp on", "lit"));
    assertTrue(trial("hold limit open when lamp on").seen("lit"), "healthy");
    assertEquals(0, trial("hold limit open when lamp on").read("bad", MeterFunction.VOLTS_LOW_IMPEDANCE, "B", "C"),
        1e-6);
  }

  @Test
  void aTripWaitsForItsCondition() {
    CircuitState off = trial("hold limit open when lamp on").start().isolate("hand switch");
    Trial dark = trial("hold limit open when lamp on").in(off);
    assertEquals(0.02, dark.read("bad", MeterFunction.OHMS, "A", "B"), 1e-3, "closed: it never got hot");
    assertTrue(trial("hold limit open").in(off).read("bad", MeterFunction.OHMS, "A", "B") > 10);
  }

  @Test
  void aShownValueTakesThePlaceOfTheOthers() {
    assertTrue(seen("show light code", "light code"));
    assertFalse(seen("show light code", "light steady"));
    assertTrue(seen("show light code when not lamp on, open lamp", "light code"));
    assertTrue(seen("show light code when not lamp on", "light steady"), "the lamp is on");
  }

  @Test
  void whatOnlyAFaultSetsIsUsuallyTheOther() {
    Trial dirty = trial("show dirt, hide flow");
    assertEquals(List.of(false, true, true, false), List.of(dirty.seen("dirt"), dirty.seen("flow"),
        dirty.seenWith("bad", "dirt"), dirty.seenWith("bad", "flow")));
  }

  @Test
  void twoFaultsTripTogether() {
    assertFalse(seen("hold limit open when lamp on, hide lit when never", "lit"));
  }

  /** A lamp at full voltage does not hum, so the limit never trips; a filter that looks dirty is seen. */
  @Test
  void aFaultWhoseConditionNeverHoldsShowsNowhere() {
    assertEquals(1, HiddenFaults.of(Trial.read("R C A B", SIGHTS, "bad: hold limit open when lamp humming", PARTS)
        .system()).size());
    assertEquals(List.of(), HiddenFaults.of(Trial.read("R C A B", SIGHTS, "bad: in filter, show dirt", PARTS)
        .system()));
  }

  /** The conditions of both codes hold only once the limit has tripped, so only with the fault. */
  @Test
  void twoValuesAtOnceAreFoundWithTheirFault() {
    String sights = "light: at bench, one when limit open, two when not lamp on and not hot, steady";
    String[] parts = Arrays.copyOf(PARTS, PARTS.length + 1);
    parts[PARTS.length] = "hot: state, when lamp on";
    var clashes = ValueClashes.of(Trial.read("R C A B", sights, "bad: hold limit open when lamp on", parts).system());
    assertEquals(List.of("one two bad"), clashes.stream()
        .map(clash -> clash.first() + " " + clash.second() + " " + clash.caseKey()).toList());
    assertEquals(List.of(),
        ValueClashes.of(Trial.read("R C A B", sights, "bad: open lamp, show light one", parts).system()));
  }
}
