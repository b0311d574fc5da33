package rungbook.ladder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.PartBranch;
import rungbook.system.reader.VariantsReader;

/** What rungs a circuit has. How a ladder is drawn is common practice: sources at the rails, loads at the right one. */
class LadderTest {

  private static final Path SYSTEMS = Path.of("shared/systems");

  /** Each with a name for JUnit, which would name a test after the whole system. */
  static List<Named<ControlSystem>> starters() throws IOException {
    try (Stream<Path> files = Files.list(SYSTEMS)) {
      return files.sorted().flatMap(LadderTest::forms).toList();
    }
  }

  private static Stream<Named<ControlSystem>> forms(Path file) {
    try {
      var systems = systems(file.toString(), Files.readString(file)).systems();
      return Stream.concat(Stream.of(Named.of(file.getFileName().toString(), systems.base())),
          systems.variants().stream().map(form -> Named.of(form.name(), form.system())));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static VariantsReader.Read systems(String name, String text) {
    return VariantsReader.read(name, DocumentReader.read(new Source(name, text)));
  }

  private static Ladder ladder(String parts) {
    var read = systems("bench", """
        ---
        title: Bench
        ---

        ```locations
        bench: start
        ```

        ```points
        L1: at bench
        L2: at bench
        N: at bench
        R: at bench
        C: at bench
        Y: at bench
        Z: at bench
        ground: at bench
        ```

        ```controls
        call: off, on, at bench
        ```

        ```parts
        call contact: contact, R to Y, closed when call on
        """ + parts + "```\n");
    return Ladder.of(read.systems().base());
  }

  @ParameterizedTest
  @MethodSource("starters")
  void everyLimbAndStateIsShownOnce(ControlSystem system) {
    Ladder ladder = Ladder.of(system);
    List<String> shown = Stream.concat(
        Stream.concat(rungs(ladder).flatMap(rung -> rung.elements().stream()).map(Element::name),
            nodes(ladder).distinct().flatMap(node -> node.joints().stream())),
        ladder.logic().stream().map(Ladder.Logic::name)).sorted().toList();
    List<String> limbs = system.parts().stream()
        .flatMap(part -> part.branches().isEmpty() ? Stream.of(part.name())
            : part.branches().stream().map(PartBranch::name))
        .sorted().toList();
    assertEquals(limbs, shown);
  }

  @ParameterizedTest
  @MethodSource("starters")
  void everyRungIsAWayOfTheCircuit(ControlSystem system) {
    rungs(Ladder.of(system)).forEach(rung -> {
      assertEquals(rung.elements().size() + 1, rung.nodes().size());
      for (int i = 0; i < rung.elements().size(); i++) {
        PartBranch branch = system.branch(Names.key(rung.elements().get(i).name())).orElseThrow();
        assertTrue(has(rung.nodes().get(i), branch) && has(rung.nodes().get(i + 1), branch),
            rung.name() + ": " + branch.name());
      }
    });
  }

  /** Between two legs of a supply ground is one node of the drawing and two ends. */
  private static boolean has(Node node, PartBranch branch) {
    return Stream.of(branch.a(), branch.b()).anyMatch(terminal -> node.names().stream()
        .anyMatch(name -> Names.key(name.replace("inside ", "")).startsWith(terminal.point())));
  }

  private static Stream<Rung> rungs(Ladder ladder) {
    return ladder.blocks().stream().flatMap(block -> block.rungs().stream());
  }

  private static Stream<Node> nodes(Ladder ladder) {
    return Stream.concat(ladder.blocks().stream().flatMap(block -> Stream.of(block.left(), block.right())),
        rungs(ladder).flatMap(rung -> rung.nodes().stream()));
  }

  private static String words(Rung rung) {
    return String.join(" - ", rung.elements().stream().map(Element::name).toList());
  }

  @Test
  void lineAndControlVoltageAreApart() {
    Ladder ladder = ladder("""
        supply: supply, 120 V, 0.05 ohm, L1 to N
        bond: joint, N to ground
        transformer: transformer, 120 V primary, 24 V secondary, 40 VA, regulation 12 % of full load, L1 to N, R to C
        common bond: wire, C to ground
        coil: coil, 24 V, 7.5 VA, Y to C
        """);
    assertEquals(List.of("120 V from supply", "24 V from transformer"),
        ladder.blocks().stream().map(VoltageBlock::title).toList());
    assertEquals(List.of(true, false), ladder.blocks().stream().map(VoltageBlock::isLine).toList());
    assertEquals(List.of("L1"), ladder.blocks().get(0).left().names());
    assertEquals(List.of("N"), ladder.blocks().get(0).right().names());
    assertEquals(List.of("R"), ladder.blocks().get(1).left().names());
    assertEquals(List.of("transformer secondary", "call contact - coil", "common bond"),
        ladder.blocks().get(1).rungs().stream().map(LadderTest::words).toList());
  }

  /** A second contact around the first one: a rung of its own, to the node that is drawn already. */
  @Test
  void aParallelContactLeadsToTheRungThatHasItsEnd() {
    List<Rung> rungs = rungs(ladder("""
        supply: supply, 24 V, 0.05 ohm, R to C
        holding contact: contact, R to Y, closed when coil on
        coil: coil, 24 V, 7.5 VA, Y to C
        """)).toList();
    assertEquals(List.of("supply", "call contact - coil", "holding contact"),
        rungs.stream().map(LadderTest::words).toList());
    assertEquals(0, rungs.get(2).from());
    assertEquals(2, rungs.get(2).to());
  }

  @Test
  void theFuseIsInTheSourcesRung() {
    Ladder ladder = ladder("""
        supply: supply, 24 V, 0.05 ohm, Z to C
        fuse: fuse, 3 A, Z to R
        coil: coil, 24 V, 7.5 VA, Y to C
        lamp: load, 24 V, 5 W, R to C
        """);
    assertEquals("fuse - supply", words(rungs(ladder).findFirst().orElseThrow()));
    assertEquals(List.of("R"), ladder.blocks().get(0).left().names());
  }

  @Test
  void aContactIsDrawnInItsNormalPosition() {
    Ladder ladder = ladder("""
        supply: supply, 24 V, 0.05 ohm, R to C
        coil: coil, 24 V, 7.5 VA, Y to C
        break contact: contact, R to Z, closed when not coil on
        lamp: load, 24 V, 5 W, Z to C
        """);
    List<Element> contacts = rungs(ladder).flatMap(rung -> rung.elements().stream())
        .filter(element -> element.name().endsWith("contact")).toList();
    assertEquals(List.of(Symbol.CONTACT, Symbol.CONTACT_NORMALLY_CLOSED),
        contacts.stream().map(Element::symbol).toList());
    assertEquals(List.of("call on", "not coil on"), contacts.stream().map(Element::note).toList());
  }

  @Test
  void notesSayHowATimerRunsAndWhatHasAButton() {
    Ladder ladder = ladder("""
        supply: supply, 24 V, 0.05 ohm, R to C
        delay: state, when call on, on after 5 min, off after 90 s
        limit: switch, R to Z, manual reset
        high limit: switch, Z to Y, closed when delay, manual reset
        coil: coil, 24 V, 7.5 VA, Y to C
        """);
    assertEquals(List.of("call on", "manual reset", "delay, manual reset"),
        rungs(ladder).flatMap(rung -> rung.elements().stream()).map(Element::note).filter(note -> !note.isEmpty())
            .toList());
    assertEquals(List.of("when call on, on after 300 s, off after 90 s"),
        ladder.logic().stream().map(Ladder.Logic::when).toList());
  }

  @Test
  void whatNoSourceReachesIsStillShown() {
    Ladder ladder = ladder("lamp: load, 24 V, 5 W, Z to C\n");
    assertEquals(List.of("Connected to no source", "Connected to no source"),
        ladder.blocks().stream().map(VoltageBlock::title).toList());
  }
}
