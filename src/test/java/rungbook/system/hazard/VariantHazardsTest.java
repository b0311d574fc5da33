package rungbook.system.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.reader.VariantsReader;

/** A heater behind a switch; in the variant with a fuse and a capacitor. Read off the wiring. */
class VariantHazardsTest {

  private static final String TEXT = """
      ---
      title: Bench
      ---

      ```locations
      panel: start
      bench: walk 1 min
      ```

      ```points
      main: at panel, 120 V
      N: at panel, bench
      A: at bench, 120 V
      B: at bench, 120 V
      E: at bench, 120 V
      ```

      ```controls
      breaker: isolates power, at panel
      local switch: isolates power, at bench
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, main to N at panel
      breaker: breaker, 15 A, main to A
      return: wire, N at bench to N at panel
      local switch: switch, A to B
      lead: wire, B to E
      heater: heater, 120 V, 600 W, E to N at bench
      ```

      ```variants
      fused heater: share 5 %
      ```

      ```variant fused heater
      lead: fuse, 10 A, B to E
      capacitor: capacitor, E to N at bench, 10 uF
      ```
      """;

  private static final ElectricalHazards HAZARDS = ElectricalHazards
      .of(VariantsReader.read("bench", DocumentReader.read(new Source("bench.md", TEXT))).systems());

  /** In the base B and E are one wire, so either is enough; in the variant a fuse is between them. */
  @Test
  void aConductorIsProvedDeadAsInEachVariant() {
    assertEquals(Set.of(Set.of("b"), Set.of("e")), Set.copyOf(HAZARDS.conductorsAt("bench")));
  }

  @Test
  void whatIsChargedInOneVariantIsCharged() {
    assertTrue(HAZARDS.charged().contains("capacitor"));
    assertTrue(HAZARDS.charged().contains("e"));
  }
}
