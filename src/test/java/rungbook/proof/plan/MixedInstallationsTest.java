package rungbook.proof.plan;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungbook.circuit.MeterFunction;
import rungbook.circuit.Probe;
import rungbook.circuit.Reading;
import rungbook.circuit.network.CircuitState;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.SystemVariants;
import rungbook.system.Terminal;
import rungbook.system.reader.VariantsReader;

/** A lamp behind a fuse; a quarter of them has no fuse, and another quarter a second lamp in series. */
class MixedInstallationsTest {

  private static final String TEXT = """
      ---
      title: Bench
      ---

      ```locations
      bench: start
      ```

      ```points
      L1: at bench, 120 V
      N: at bench
      A: at bench
      B: at bench
      E: at bench
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, L1 to N
      fuse: fuse, 5 A, L1 to A
      feed: wire, A to B
      lamp: load, 120 V, 60 W, B to N
      ```

      ```sights
      fuse fitted: at bench, when not variant no fuse
      ```

      ```faults
      fuse open: open fuse, likelihood 4
      lamp open: open lamp
      ```

      ```variants
      no fuse: share 25 %
      two lamps: share 25 %
      ```

      ```variant no fuse
      without: fuse
      feed: wire, L1 to B
      ```

      ```variant two lamps
      lamp: load, 120 V, 60 W, B to E
      second: load, 120 V, 60 W, E to N
      ```

      ```variant two lamps, faults
      second open: open second, likelihood 2
      ```
      """;

  private static final SystemVariants SYSTEMS = VariantsReader
      .read("bench", DocumentReader.read(new Source("bench.md", TEXT))).systems();
  private static final Installations MIXED = MixedInstallations.of(SYSTEMS, 16);
  private static final CircuitState START = CircuitState.start(SYSTEMS.base().vocabulary());

  private static Probe volts(String red) {
    return new Probe(MeterFunction.VOLTS, MeterFunction.VOLTS.usualOhms(), new Terminal(red, "bench"),
        new Terminal("n", "bench"));
  }

  @Test
  void eachVariantHasItsShareOfTheDrawnHouses() {
    assertEquals(List.of(new Installations.Variant("", 0.5, 8), new Installations.Variant("no fuse", 0.25, 4),
        new Installations.Variant("two lamps", 0.25, 4)), MIXED.variants());
    assertEquals(16, MIXED.drawn());
    assertEquals(List.of(0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2),
        IntStream.range(0, 16).mapToObj(MIXED::variant).toList());
  }

  @Test
  void aFaultThatFewCanHaveIsAsMuchRarer() {
    assertEquals(List.of("healthy", "fuse open", "lamp open", "second open"), MIXED.cases());
    assertEquals(3, MIXED.likelihood(1), 1e-12, "4, in three of four");
    assertEquals(1, MIXED.likelihood(2), 1e-12);
    assertEquals(0.5, MIXED.likelihood(3), 1e-12, "2, in one of four");
  }

  @Test
  void whatHasNoSuchFaultDoesNotCountAndTheRestCountsForIt() {
    for (int one = 0; one < 4; one++) {
      int number = one;
      assertEquals(16, IntStream.range(0, 16).mapToDouble(sample -> MIXED.weight(number, sample)).sum(), 1e-9);
    }
    assertEquals(0, MIXED.weight(1, 9), "no fuse, no open fuse");
    assertEquals(4, MIXED.weight(3, 13), 1e-12);
  }

  @Test
  void eachHouseReadsAsItsVariantByItself() {
    double[] mixed = new double[MIXED.samples()];
    MIXED.in(START, List.of(volts("b"))).readings(0, volts("b"), mixed);
    for (int form = 0; form < 3; form++) {
      var system = SYSTEMS.all().toList().get(form);
      Installations alone = DictionaryInstallations.of(system, 1);
      double[] read = new double[alone.samples()];
      alone.in(START, List.of(volts("b"))).readings(0, volts("b"), read);
      for (int sample = 0; sample < MIXED.samples(); sample++) {
        if (MIXED.variant(sample) == form) {
          assertEquals(read[0], mixed[sample], read[0] / 20, "a supply of 120 V in all");
        }
      }
    }
  }

  @Test
  void leadsWhereAVariantHasNoPartReadNothing() {
    double[] read = new double[MIXED.samples()];
    MIXED.in(START, List.of(volts("e"))).readings(0, volts("e"), read);
    assertEquals(Reading.FLOATING, read[0]);
    assertEquals(60, read[13], 3, "half of the supply between two equal lamps");
    assertArrayEquals(read, MIXED.healthy(START, List.of(volts("e")))[0]);
  }

  @Test
  void aSightAnswersWhichVariantItIs() {
    boolean[] seen = new boolean[MIXED.samples()];
    MIXED.in(START, List.of()).seen(0, "fuse fitted", seen);
    IntStream.range(0, seen.length).forEach(sample -> assertEquals(MIXED.variant(sample) != 1, seen[sample]));
  }

  @Test
  void aVariantCanBeLeftOut() {
    Installations left = MIXED.without(Set.of("no fuse"));
    assertEquals(12, left.drawn());
    assertEquals(2 / 3.0, left.variants().get(0).share(), 1e-12);
    assertEquals(4, left.likelihood(1), 1e-12, "all that are left have the fuse");
  }

  @Test
  void theHouseIsNamedByItsVariant() {
    assertEquals("supply 120.0 V", MIXED.circumstances(0, 0));
    assertEquals("variant no fuse, supply 120.0 V", MIXED.circumstances(0, 8));
  }

  @Test
  void everyVariantCountsForTheHighestVoltage() {
    Installations few = MixedInstallations.few(SYSTEMS);
    assertEquals(Set.of(0, 1, 2), IntStream.range(0, few.samples()).map(few::variant).boxed()
        .collect(Collectors.toSet()));
    assertTrue(few.models(volts("e")));
  }
}
