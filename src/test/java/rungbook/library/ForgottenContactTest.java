package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.ladder.Element;
import rungbook.ladder.Ladder;
import rungbook.ladder.Rung;
import rungbook.markdown.DocumentReader;
import rungbook.proof.demand.OperatingTable;
import rungbook.source.Source;
import rungbook.system.reader.VariantsReader;

/** A boiler with two zone valves: what shows that its burner lacks the contact of the zone valves' end switches. */
class ForgottenContactTest {

  private static final String BOILER = """
      ---
      title: Boiler with two zones
      ---

      ```locations
      hall: start
      boiler room: walk 2 min
      ```

      ```points
      R: at boiler room
      C: at boiler room
      upstairs W: at boiler room
      downstairs W: at boiler room
      TT: at boiler room
      ```

      ```controls
      upstairs thermostat: off, heating, at hall
      downstairs thermostat: off, heating, at hall
      ```

      ```parts
      mains: supply, 120 V, 0.05 ohm, inside mains to inside N
      breaker: breaker, 15 A, inside mains to inside L
      transformer: transformer, 120 V primary, 24 V secondary, 40 VA, regulation 12 % of full load, inside L to inside N, inside X to C
      fuse: fuse, 3 A, inside X to R
      upstairs call: contact, R to upstairs W, closed when upstairs thermostat heating
      upstairs valve: coil, 24 V, 5 VA, upstairs W to C
      downstairs call: contact, R to downstairs W, closed when downstairs thermostat heating
      downstairs valve: coil, 24 V, 5 VA, downstairs W to C
      """;

  private static VariantsReader.Read read(String burner) {
    return VariantsReader.read("boiler",
        DocumentReader.read(new Source("shared/systems/boiler.md", BOILER + burner + "```\n")));
  }

  private static final VariantsReader.Read FORGOTTEN = read("""
      burner wire: wire, R to TT
      burner: coil, 24 V, 10 VA, TT to C
      """);

  private static final VariantsReader.Read SOUND = read("""
      end switches: contact, R to TT, closed when upstairs valve on or downstairs valve on
      burner: coil, 24 V, 10 VA, TT to C
      """);

  private static List<Boolean> burnerOn(VariantsReader.Read read) {
    return OperatingTable.of(read.systems().base()).rows().stream()
        .map(row -> row.activity().on().containsKey("burner")).toList();
  }

  private static List<String> burnerRung(VariantsReader.Read read) {
    return Ladder.of(read.systems().base()).blocks().stream().flatMap(block -> block.rungs().stream())
        .filter(rung -> rung.name().equals("burner")).map(Rung::elements).findFirst().orElseThrow().stream()
        .map(Element::name).toList();
  }

  @Test
  void aNoteNamesTheBurner() {
    assertEquals(List.of("load-always-on burner"),
        FORGOTTEN.problems().stream().map(problem -> problem.code() + " " + problem.facts().get("name")).toList());
    assertTrue(SOUND.problems().isEmpty(), SOUND.problems()::toString);
  }

  @Test
  void theTableHasItOnInEveryPosition() {
    assertEquals(List.of(true, true, true, true), burnerOn(FORGOTTEN));
    assertEquals(List.of(false, true, true, true), burnerOn(SOUND));
  }

  @Test
  void theLadderHasNoContactInItsRung() {
    assertEquals(List.of("burner wire", "burner"), burnerRung(FORGOTTEN));
    assertEquals(List.of("end switches", "burner"), burnerRung(SOUND));
  }
}
