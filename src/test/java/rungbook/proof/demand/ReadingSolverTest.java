package rungbook.proof.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.SystemVariants;
import rungbook.system.reader.VariantsReader;
import rungbook.tree.Meter;

/** Readings on demand, against netlists by hand for ngspice 39 and against Ohm's law, worked out beside each check. */
class ReadingSolverTest {

  private static final String TEXT = """
      ---
      title: Bench
      ---

      ```locations
      bench: start, panel lid
      shed: walk 1 min
      ```

      ```points
      R: at bench, shed
      Y: at bench, shed
      C: at bench
      T: at bench
      spare: at bench
      ground: at bench
      ```

      ```controls
      call: off, on, at bench
      main switch: isolates power, at bench
      lid switch: interlock, at bench
      ```

      ```parts
      supply: supply, 24 V, from 22 to 26 V, 0.001 ohm, R at bench to C
      bond: joint, C to ground
      cable: cable, 18 AWG, 50 ft, 20 C, 30 pF/ft, 5.5 pF/ft to ground, bench to shed, conductor R, conductor Y
      call contact: contact, R at shed to Y at shed, closed when call on
      lid switch: interlock, Y at bench to inside lid, opens with lid
      main switch: switch, inside lid to T
      lamp: load, 24 V, 24 VA, tolerance 0 %, T to C, works above 10 V
      ```

      ```sights
      lamp lit: at bench, when lamp on
      ```

      ```quantities
      lamp rise: temperature difference, at bench, 40 to 70 F when lamp on, 0 F when call off
      ```

      ```faults
      lamp open: open lamp
      lamp dusty: in dust, show lamp rise 75 to 110 F when lamp on
      contact pitted: raise call contact by 24 ohm
      Y broken: open Y cable
      ```

      ```variants
      small lamp: share 30 %
      ```

      ```variant small lamp
      lamp: load, 24 V, 12 VA, tolerance 0 %, T to C, works above 10 V
      ```
      """;

  /** 50 ft of 18 AWG at 20 C, from the wire table of a handbook (6.385 ohm per 1000 ft). */
  private static final double CONDUCTOR_OHMS = 0.31925;

  /** The netlist of {@code anUndrivenConductorShowsAStrayVoltage}, solved by ngspice 39. */
  private static final double NGSPICE_STRAY_VOLTS = 20.59493;

  private static final double NGSPICE_LOW_IMPEDANCE_VOLTS = 0.0407;

  private static final VariantsReader.Read READ = VariantsReader
      .read("bench", DocumentReader.read(new Source("shared/systems/bench.md", TEXT)));

  private static final SystemVariants BENCH = READ.systems();

  private static ReadingAnswer answer(ReadingRequest request) {
    RequestReader.Read read = RequestReader.read(request, BENCH, Meter.common());
    assertEquals(List.of(), read.problems());
    ReadingQuestion question = read.question().orElseThrow();
    return ReadingSolver.of(question.system(), question.fault(), 64).answer(question);
  }

  private static ReadingRequest of(String leads, String fault, String quantity, String... set) {
    return new ReadingRequest("", "bench", leads, List.of(set), fault, quantity);
  }

  private static boolean isLit(ReadingRequest request) {
    return answer(request).activity().on().containsKey("lamp");
  }

  private static Shown.Amounts amounts(ReadingAnswer answer) {
    return assertInstanceOf(Shown.Amounts.class, answer.shown());
  }

  /** Both ends of the supply's range reach the lamp, less 2.6 % in 100 ft of 18 AWG and two contacts. */
  @Test
  void lowAndHighAreTheEndsOfTheSupply() {
    Shown.Amounts read = amounts(answer(of("T, C", "", "", "call on")));
    double share = 24 / (24 + 2 * CONDUCTOR_OHMS + 3 * 0.02 + 0.001);
    assertEquals(22 * share, read.low(), 1e-3);
    assertEquals(26 * share, read.high(), 1e-3);
    assertEquals(24 * share, read.usual(), 0.5);
  }

  /** 24 ohm in series with a lamp of 24 ohm leaves it half of the volts, and it is not lit below 10 V. */
  @Test
  void aFaultChangesReadingAndActivity() {
    ReadingAnswer healthy = answer(of("T, C", "", "", "call on"));
    ReadingAnswer pitted = answer(of("T, C", "contact pitted", "", "call on"));
    assertTrue(healthy.activity().on().containsKey("lamp"));
    assertEquals(1.0, healthy.activity().seen().get("lamp lit"));
    double share = 24 / (48 + 2 * CONDUCTOR_OHMS + 3 * 0.02 + 0.001);
    assertEquals(26 * share, amounts(pitted).high(), 1e-3);
    assertTrue(pitted.activity().on().get("lamp") > 0.9, "10 V needs more than 20.3 V of supply");
  }

  /** 1 A through the lamp at 24 V; a clamp needs one point. */
  @Test
  void aClampReadsAmps() {
    Shown.Amounts read = amounts(answer(of("R", "", "AC amps", "call on")));
    assertEquals(26 / (24 + 2 * CONDUCTOR_OHMS + 0.061), read.high(), 1e-3);
  }

  /**
   * With the lid open, only the capacitance beside R drives the Y conductor. The netlist is that of
   * {@code ghost-low-impedance.cir} with 26 V, and with a meter of 10 Mohm and 100 pF for the first reading.
   */
  @Test
  void anUndrivenConductorShowsAStrayVoltage() {
    Shown.Amounts read = amounts(answer(of("Y, C", "", "", "lid open")));
    assertTrue(read.lowImpedance().isPresent());
    assertEquals(NGSPICE_STRAY_VOLTS, read.high(), 1e-3);
    assertEquals(NGSPICE_LOW_IMPEDANCE_VOLTS, read.lowImpedance().get(), 0.002, "at the 24 V that are usual");
    assertFalse(amounts(answer(of("Y, C", "", "", "call on"))).lowImpedance().isPresent());
  }

  @Test
  void controlsMoveTheCircuit() {
    assertTrue(isLit(of("", "", "", "call on")));
    assertFalse(isLit(of("", "", "")));
    assertFalse(isLit(of("", "", "", "call on", "main switch off")));
    assertFalse(isLit(of("", "", "", "call on", "lid open")));
    assertTrue(isLit(of("", "", "", "call on", "lid open", "lid switch bypassed")));
  }

  @Test
  void ohmsNeedADeadCircuit() {
    assertEquals(new Shown.Nothing(NoReading.LIVE), answer(of("T, C", "", "ohms", "call on")).shown());
    assertEquals(24, amounts(answer(of("T, C", "", "ohms", "lid open"))).usual(), 1e-3);
    assertEquals(new Shown.Nothing(NoReading.OPEN), answer(of("T, C", "lamp open", "ohms", "lid open")).shown());
  }

  @Test
  void whatTheCircuitDoesNotHaveIsSaid() {
    assertEquals(new Shown.Nothing(NoReading.NOT_WIRED), answer(of("spare, C", "", "")).shown());
    assertEquals(new Shown.Nothing(NoReading.NOT_SIMULATED), answer(of("T, C", "", "DC volts")).shown());
    assertEquals(new Shown.NotAsked(), answer(of("", "", "")).shown());
  }

  /** 12 VA at 24 V are 48 ohm. */
  @Test
  void aVariantHasItsOwnCircuit() {
    ReadingRequest ohms = new ReadingRequest("small lamp", "", "T, C", List.of("lid open"), "", "ohms");
    assertEquals(48, amounts(answer(ohms)).usual(), 1e-3);
  }

  /** The corners are the ends of a range; the median of 64 draws is within 3.5 standard deviations of its middle. */
  @Test
  void aQuantityOutsideTheCircuitIsReadByItsName() {
    Shown.Amounts good = amounts("call on", "");
    assertEquals(List.of(40.0, 70.0), List.of(good.low(), good.high()));
    assertEquals(55, good.usual(), 3.5 * 30 / 2 / Math.sqrt(64 + 2));
    Shown.Amounts dusty = amounts("call on", "lamp dusty");
    assertEquals(List.of(75.0, 110.0), List.of(dusty.low(), dusty.high()));
    assertEquals(0, amounts("call off", "lamp dusty").high(), "the lamp is off");
    var nothing = assertInstanceOf(Shown.Nothing.class, rise("call on", "lamp open").shown());
    assertEquals(NoReading.UNSTEADY, nothing.why(), "nothing is stated for a call without light");
  }

  private static Shown.Amounts amounts(String set, String fault) {
    return assertInstanceOf(Shown.Amounts.class, rise(set, fault).shown());
  }

  private static ReadingAnswer rise(String set, String fault) {
    return answer(new ReadingRequest("", "", "", List.of(set), fault, "lamp rise"));
  }
}
