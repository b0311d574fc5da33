package rungbook.system.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.Condition;
import rungbook.system.ControlSystem;
import rungbook.system.Fault;
import rungbook.system.Part;
import rungbook.system.SystemVariants;
import rungbook.system.Variant;

/** What a variant's text makes of the base; the expected circuits are written down by hand. */
class VariantsReaderTest {

  private static final String BENCH = """
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
      ```

      ```controls
      lever: off, on, at bench
      ```

      ```parts
      supply: supply, 120 V, 0.05 ohm, L1 to N
      fuse: fuse, 5 A, L1 to A
      lever: contact, A to B, closed when lever on
      lamp: load, 120 V, 60 W, B to N
      ```

      ```assemblies
      box: fuse, lever
      ```

      ```sights
      glow: at bench, when lamp on
      blue: at bench, when variant large lamp
      ```

      ```faults
      fuse open: open fuse, likelihood 4
      lamp open: open lamp
      feed shorted: short A to N
      ```

      """;

  private static VariantsReader.Read read(String variants) {
    return VariantsReader.read("bench", DocumentReader.read(new Source("shared/systems/bench.md", BENCH + variants)));
  }

  private static Variant only(String changes) {
    var read = read("```variants\nlarge lamp: share 12.5 %, about it draws 2 A, and is blue\n```\n\n" + changes);
    assertEquals(List.of(), read.problems());
    return read.systems().variants().get(0);
  }

  private static SystemVariants listed(String variants, String changes) {
    return read("```variants\n" + variants + "\n```\n\n" + changes).systems();
  }

  private static List<String> parts(ControlSystem system) {
    return system.parts().stream().map(Part::name).toList();
  }

  private static List<String> faults(ControlSystem system) {
    return system.faults().stream().map(Fault::name).toList();
  }

  @Test
  void aLineOfTheSameNameTakesThePlaceOfTheBases() {
    Variant large = only("```variant large lamp\nlamp: load, 120 V, 240 W, B to N\n```\n");
    assertEquals(List.of("supply", "fuse", "lever", "lamp"), parts(large.system()));
    var base = read("").systems().base().part("lamp").orElseThrow();
    assertNotEquals(base, large.system().part("lamp").orElseThrow());
  }

  @Test
  void aNewNameAddsAPart() {
    Variant large = only("```variant large lamp\nsecond: load, 120 V, 60 W, B to N\n```\n");
    assertEquals(List.of("supply", "fuse", "lever", "lamp", "second"), parts(large.system()));
  }

  @Test
  void whatIsTakenAwayIsInNoAssemblyAndHasNoFault() {
    Variant bare = only("```variant large lamp\nwithout: fuse\nlever: contact, L1 to B, closed when lever on\n```\n");
    assertEquals(List.of("supply", "lever", "lamp"), parts(bare.system()));
    assertEquals(List.of("lamp open"), faults(bare.system()), "and no short at a point that no part has");
    assertEquals(Set.of("lever"), bare.system().vocabulary().assemblies().get("box").stream()
        .filter(member -> bare.system().part(member).isPresent()).collect(Collectors.toSet()));
  }

  @Test
  void aFaultCanBeTakenAwayByItself() {
    Variant large = only("```variant large lamp, faults\nwithout: feed shorted\n```\n");
    assertEquals(List.of("fuse open", "lamp open"), faults(large.system()));
  }

  @Test
  void faultsAndSightsChangeToo() {
    Variant large = only("```variant large lamp, faults\nlamp open: open lamp, likelihood 9\n"
        + "lamp dim: raise lamp by 9 ohm\n```\n\n```variant large lamp, sights\n"
        + "glow: at bench, when not lamp on\n```\n");
    assertEquals(List.of("fuse open", "lamp open", "feed shorted", "lamp dim"), faults(large.system()));
    assertEquals(9, large.system().faults().get(1).likelihood());
    assertTrue(large.system().sights().get(0).when() instanceof Condition.Not);
  }

  @Test
  void aSightMayBeThatOfOneVariant() {
    var systems = listed("large lamp: share 10 %",
        "```variant large lamp\nlamp: load, 120 V, 240 W, B to N\n```\n");
    assertEquals(Condition.always(), systems.variants().get(0).system().sights().get(1).when());
    assertEquals(new Condition.Not(Condition.always()), systems.base().sights().get(1).when());
  }

  @Test
  void theBaseHasTheRestOfTheShares() {
    var systems = listed("large lamp: share 12.5 %\nother: share 30 %",
        "```variant large lamp\nlamp: load, 120 V, 240 W, B to N\n```\n\n```variant other\nwithout: lamp\n```\n");
    assertEquals(0.575, systems.baseShare(), 1e-12);
    assertEquals(0.125, systems.variants().get(0).share(), 1e-12);
    assertEquals(1, systems.without(Set.of("other")).variants().size());
  }

  @Test
  void wordsAboutItGoToTheEndOfTheLine() {
    Variant large = only("```variant large lamp\nlamp: load, 120 V, 240 W, B to N\n```\n");
    assertEquals("it draws 2 A, and is blue", large.about());
  }

  @Test
  void treesMayUseTheNamesOfEveryVariant() {
    var systems = listed("large lamp: share 10 %",
        "```variant large lamp\nsecond: load, 120 V, 60 W, E to N\nthird: wire, B to E\n```\n\n"
            + "```variant large lamp, points\nE: at bench, 120 V\nN: at bench, 90 V\n```\n");
    var words = systems.base().vocabulary();
    assertTrue(words.points().containsKey("e") && words.parts().containsKey("second"));
    assertEquals(90, words.points().get("n").volts().orElseThrow(), "the highest voltage that it has");
    assertFalse(systems.base().part("second").isPresent());
  }
}
