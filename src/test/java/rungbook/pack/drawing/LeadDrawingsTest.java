package rungbook.pack.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.ladder.Symbol;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.system.reader.BaseSystem;
import rungbook.tree.Shared;
import rungbook.tree.Step;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/** What each kind of part, and each place of a terminal, is drawn as. */
class LeadDrawingsTest {

  private static final String BENCH = """
      ---
      title: Bench
      ---

      ```locations
      bench: start
      roof: walk 2 min
      ```

      ```points
      L1: at bench, 120 V
      N: at bench
      main: at bench, 120 V
      R: at bench
      C: at bench, roof
      Y: at bench, roof
      fuse in: at bench
      transformer 1: at bench, 120 V
      float in: at bench
      float out: at bench
      relay coil Y: at bench
      relay coil C: at bench
      pole in: at bench
      pole out: at bench
      1L: at bench
      2L: at bench
      1T: at bench
      2T: at bench
      contactor coil 1: at bench
      contactor coil 2: at bench
      knife A: at bench, 120 V
      knife B: at bench, 120 V
      fan L1: at bench, 120 V
      fan N: at bench
      heater L1: at bench, 120 V
      heater N: at bench
      lamp 1: at bench
      lamp 2: at bench
      start 1: at bench, 120 V
      start 2: at bench, 120 V
      ground: at bench
      ```

      ```strips
      bench terminals: at bench, R, Y, C
      line terminals: at bench, L1, N
      ```

      ```controls
      call: off, on, at bench
      knife: isolates power, at bench
      float switch: interlock, at bench
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, main to N
      breaker: breaker, 15 A, main to knife A
      knife: switch, knife A to knife B
      knife link: joint, knife B to L1
      transformer: transformer, 120 V primary, 24 V secondary, 40 VA, regulation 12 % of full load, \
      transformer 1 to N, fuse in to C at bench
      transformer link: joint, L1 to transformer 1
      control fuse: fuse, 3 A, fuse in to R
      float feed: joint, R to float in
      float switch: interlock, float in to float out
      call contact: contact, float out to Y at bench, closed when call on
      relay link: joint, Y at bench to relay coil Y
      relay: coil, 24 V, 5 VA, relay coil Y to relay coil C
      relay return: joint, relay coil C to C at bench
      relay pole: contact, pole in to pole out, closed when relay on
      pole feed: joint, R to pole in
      contactor: coil, 24 V, 5 VA, contactor coil 1 to contactor coil 2
      contactor return: joint, contactor coil 2 to C at bench
      contactor pole 1: contact, 1L to 1T, closed when contactor on
      contactor pole 2: contact, 2L to 2T, closed when contactor on
      fan: motor, 120 V, 1 A, fan L1 to fan N
      fan feed: joint, L1 to fan L1
      fan return: joint, fan N to N
      heater: heater, 120 V, 400 W, heater L1 to heater N
      heater feed: joint, L1 to heater L1
      heater return: joint, heater N to N
      lamp: load, 24 V, 5 W, lamp 1 to lamp 2
      lamp return: joint, lamp 2 to C at bench
      start capacitor: capacitor, start 1 to start 2, 40 uF
      roof cable: cable, 18 AWG, 40 ft, bench to roof, conductor Y, conductor C
      ```
      """;

  private static final ControlSystem SYSTEM = BaseSystem.read("bench",
      DocumentReader.read(new Source("shared/systems/bench.md", BENCH))).system();

  @ParameterizedTest
  @CsvSource({"fuse in, transformer 1, FUSE, TRANSFORMER", "float in, float out, INTERLOCK,",
      "relay coil Y, relay coil C, COIL,", "pole in, pole out, CONTACT,", "knife A, knife B, SWITCH,",
      "main, knife A, BREAKER,", "fan L1, fan N, MOTOR,", "heater L1, heater N, HEATER,", "lamp 1, lamp 2, LOAD,",
      "start 1, start 2, CAPACITOR,"})
  void eachKindOfPartHasItsSymbol(String red, String black, Symbol first, Symbol second) {
    List<String> expected = second == null ? List.of(first.path()) : List.of(first.path(), second.path());
    assertEquals(expected, drawn(red, black).symbols());
  }

  /** Their symbols in the sense of the standards, from memory, differ at a glance. */
  @Test
  void noTwoKindsLookAlike() {
    List<String> paths = List.of(Symbol.values()).stream().map(Symbol::path).filter(path -> !path.isEmpty()).toList();
    assertEquals(paths.size(), Set.copyOf(paths).size());
  }

  @Test
  void twoContactsOfOneCoilAreAContactorWithFourCorners() {
    Drawn across = drawn("1L", "2L");
    assertEquals("Drawing: the leads. contactor: 1L, 2L, 1T, 2T.", across.words(), "of poles that nothing feeds");
    assertEquals(2, across.symbols().size(), "one for each pole");
    assertTrue(across.starts("red").get(0)[0] < across.starts("black").get(0)[0], "1L is on the left");
    Drawn pole = drawn("1L", "1T");
    assertEquals(pole.starts("red").get(0)[0], pole.starts("black").get(0)[0], "one above the other");
    assertTrue(pole.starts("red").get(0)[1] < pole.starts("black").get(0)[1], "the line side is above");
  }

  @Test
  void aCoilIsDrawnWithoutItsContacts() {
    Drawn coil = drawn("contactor coil 1", "contactor coil 2");
    assertEquals(List.of(Symbol.COIL.path()), coil.symbols());
    assertTrue(coil.words().endsWith("contactor, 24 V: contactor coil 1, contactor coil 2."), coil.words());
  }

  @Test
  void whatTheTitleSaysIsNotRepeatedBesideTheTerminals() {
    assertEquals(List.of("float switch", "24 V", "in", "out"),
        drawn("float in", "float out").labels().subList(0, 4).stream().map(Drawn.Label::text).toList());
  }

  @Test
  void splicedConductorsAreTwoWireEnds() {
    Drawn ends = drawn("roof", "Y", "C");
    assertTrue(ends.words().contains("wire ends, roof cable, 24 V: Y, C."), ends.words());
    assertEquals(0, ends.terminals("screw"));
    assertEquals(1, ends.count("jacket"));
  }

  @Test
  void pointsOfTwoPartsAreBothDrawnWithTheirNames() {
    Drawn both = drawn("float out", "C");
    assertTrue(both.words().endsWith(
        " float switch, 24 V: float in, float out. bench terminals, 24 V: R, Y, C."), both.words());
    assertTrue(both.starts("red").get(0)[1] < both.starts("black").get(0)[1], "one below the other");
  }

  @Test
  void aPointOnNothingIsDrawnByItselfWithTheSymbolOfGround() {
    Drawn lone = drawn("ground", "R");
    assertEquals(3, lone.terminals("screw"), "the strip's own");
    assertTrue(lone.labels().stream().anyMatch(label -> label.text().equals("ground") && label.bold()));
  }

  @Test
  void withoutASystemEachPointIsByItself() {
    Step.MeterCheck check = check("bench", "AC volts", "X", "<b>");
    Drawn lone = Drawn.of(new LeadDrawings(Optional.empty()).of(check, "Drawing: the leads"));
    assertEquals(2, lone.terminals("screw"));
    assertEquals(List.of("X", "<b>"),
        lone.labels().stream().filter(Drawn.Label::bold).map(Drawn.Label::text).limit(2).toList());
    assertEquals(List.of(), lone.symbols());
  }

  @Test
  void aLongWordIsWholeAndTheDrawingWider() {
    String word = "superheterodyne".repeat(4);
    Step.MeterCheck check = check("bench", "AC volts", word, "X");
    Drawn wide = Drawn.of(new LeadDrawings(Optional.empty()).of(check, "Drawing: the leads"));
    assertTrue(wide.width() > 300);
    assertTrue(wide.labels().stream().anyMatch(label -> label.text().equals(word)));
  }

  @Test
  void aClampHasItsJawRoundOneConductor() {
    Step.MeterCheck check = check("bench", "AC amps", "heater L1");
    Drawn clamp = Drawn.of(new LeadDrawings(Optional.of(SYSTEM)).of(check, "Drawing: the jaw"));
    assertEquals(1, clamp.count("jaw"));
    assertEquals(0, clamp.count("letters"));
    assertFalse(clamp.labels().stream().noneMatch(label -> label.text().equals("heater L1")));
  }

  private static Drawn drawn(String red, String black) {
    return drawn("bench", red, black);
  }

  private static Drawn drawn(String at, String red, String black) {
    return Drawn.of(new LeadDrawings(Optional.of(SYSTEM)).of(check(at, "AC volts", red, black), "Drawing: the leads"));
  }

  private static Step.MeterCheck check(String at, String quantity, String... leads) {
    String text = """
        ---
        title: Sample
        complaint: Nothing
        system: bench
        ---

        ## Measure

        ```check
        at: %s
        measure: %s
        leads: %s
        expect: 24 to 28
        ```
        """.formatted(at, quantity, String.join(", ", leads));
    var shared = new Shared(Map.of("bench", SYSTEM.vocabulary()), Map.of(), Map.of(), Map.of(), Map.of(),
        Map.of(), Set.of());
    Tree tree = TreeReader.read("sample", DocumentReader.read(new Source("trees/sample.md", text)), shared).tree();
    return (Step.MeterCheck) tree.steps().get(0);
  }
}
