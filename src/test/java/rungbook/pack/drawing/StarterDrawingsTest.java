package rungbook.pack.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.pack.Samples;
import rungbook.system.ControlSystem;
import rungbook.system.Names;
import rungbook.system.NominalVolts;
import rungbook.system.Terminal;
import rungbook.system.TerminalStrip;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Every drawing of the starter library: true to the text of its system, and small enough for a phone. */
class StarterDrawingsTest {

  private static final Path GOLDEN = Path.of("src/test/resources/golden/leads");

  /** A phone 320 px wide less the page's margins, with letters as large as the page's style makes them there. */
  private static final double PHONE_UNITS = 282 * 18 / (0.063 * 320);

  @Test
  void eachHasTheTwoLeadsOnTheNamedPoints() {
    everyCheck((tree, check) -> {
      Drawn drawn = drawn(tree, check);
      assertEquals(1, drawn.starts("red").size(), check.id());
      assertEquals(1, drawn.starts("black").size(), check.id());
      assertNear(check.leads().get(0).text(), drawn.starts("red").get(0), drawn);
      assertNear(check.leads().get(1).text(), drawn.starts("black").get(0), drawn);
    });
  }

  /** The label nearest to the start of a lead is that of its terminal, or what the title leaves of it. */
  private static void assertNear(String point, double[] start, Drawn drawn) {
    Drawn.Label nearest = drawn.labels().stream().filter(Drawn.Label::bold)
        .min((one, other) -> Double.compare(distance(one, start), distance(other, start))).orElseThrow();
    assertTrue(Names.key(point).contains(Names.key(nearest.text())), point + " is marked " + nearest);
    assertTrue(distance(nearest, start) < 80, point + " is far from " + nearest);
  }

  private static double distance(Drawn.Label label, double[] start) {
    return Math.hypot(label.x() - start[0], label.y() - start[1]);
  }

  @Test
  void noneMixesVoltages() {
    everyCheck((tree, check) -> {
      NominalVolts volts = NominalVolts.of(system(tree));
      long kinds = drawings(tree).touched(check).stream().flatMap(subject -> subject.terminals().stream())
          .filter(terminal -> !isGround(terminal)).map(volts::isLine).distinct().count();
      assertEquals(1, kinds, tree.id() + " " + check.id());
    });
  }

  private static boolean isGround(Terminal terminal) {
    return terminal.point().equals("ground");
  }

  @Test
  void lineVoltageIsMarkedByColorShapeAndWord() {
    everyCheck((tree, check) -> {
      NominalVolts volts = NominalVolts.of(system(tree));
      boolean line = volts.isLine(drawings(tree).leads(check).get(0));
      Drawn drawn = drawn(tree, check);
      long subjects = drawings(tree).touched(check).stream()
          .filter(subject -> !subject.terminals().stream().allMatch(StarterDrawingsTest::isGround)).count();
      assertEquals(line ? subjects : 0, drawn.count("bolt"), check.id());
      assertEquals(line ? 2 * subjects : 0, drawn.count("volts"), "a ground and a word for each: " + check.id());
      assertEquals(line, drawn.terminals("tab") > 0, check.id());
      assertTrue(!line || drawn.terminals("screw") == 0, check.id());
    });
  }

  @Test
  void aStripHasTheTerminalsOfTheTextInItsOrder() {
    everyCheck((tree, check) -> {
      for (Subject subject : drawings(tree).touched(check)) {
        Optional<TerminalStrip> strip = system(tree).strips().stream()
            .filter(one -> one.name().equals(subject.title())).findFirst();
        strip.ifPresent(known -> {
          assertEquals(known.terminals(), subject.terminals(), check.id());
          List<String> names = known.terminals().stream().map(Terminal::point).toList();
          List<String> labels = drawn(tree, check).labels().stream().map(label -> Names.key(label.text()))
              .filter(names::contains).toList();
          assertTrue(Collections.indexOfSubList(labels, names) >= 0, "from left to right in " + check.id());
        });
      }
    });
  }

  @Test
  void eachTerminalOnAStripIsDrawnOnIt() {
    everyCheck((tree, check) -> drawings(tree).leads(check).forEach(lead -> system(tree).strips().stream()
        .filter(strip -> strip.terminals().contains(lead)).forEach(strip -> assertTrue(
            drawings(tree).touched(check).stream().anyMatch(subject -> subject.title().equals(strip.name())),
            check.id()))));
  }

  @Test
  void eachFitsOnAPhoneWithLettersAsLargeAsTheText() {
    everyCheck((tree, check) -> assertTrue(drawn(tree, check).width() <= PHONE_UNITS,
        tree.id() + " " + check.id() + " is " + drawn(tree, check).width()));
  }

  @Test
  void eachSaysItsLeadsAndTerminalsInWords() {
    everyCheck((tree, check) -> {
      String words = drawn(tree, check).words();
      assertTrue(words.startsWith("Drawing: the leads."), words);
      drawings(tree).touched(check).forEach(subject -> assertTrue(words.contains(subject.title()), words));
    });
  }

  /** Read the difference; {@code -Dgolden.write=true} writes the files anew. */
  @ParameterizedTest
  @CsvSource({"no-cooling-blower-runs, y-to-c-at-the-outdoor-unit, wire-ends",
      "no-cooling-blower-runs, y-to-c-at-the-board, control-strip",
      "outdoor-unit-silent-24-volts-present, ohms-across-pole-1, contactor",
      "outdoor-unit-silent-24-volts-present, herm-to-c, capacitor",
      "nothing-runs-thermostat-blank, line-side-of-the-door-switch, switch-and-strip"})
  void theseAreAsTheyWere(String treeId, String step, String file) throws IOException {
    Tree tree = Samples.STARTER.tree(treeId).orElseThrow().tree();
    Step.MeterCheck check = checks(tree).filter(one -> one.id().equals(step)).findFirst().orElseThrow();
    String drawing = drawings(tree).of(check, "Drawing: the leads").replace("><", ">\n<") + "\n";
    Path golden = GOLDEN.resolve(file + ".svg.html");
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(golden, drawing);
    }
    assertEquals(Files.readString(golden), drawing);
  }

  private static void everyCheck(BiConsumer<Tree, Step.MeterCheck> test) {
    Samples.STARTER.trees().forEach(compiled -> checks(compiled.tree()).forEach(c -> test.accept(compiled.tree(), c)));
  }

  private static Stream<Step.MeterCheck> checks(Tree tree) {
    return tree.steps().stream().filter(Step.MeterCheck.class::isInstance).map(Step.MeterCheck.class::cast)
        .filter(check -> check.leads().size() == 2);
  }

  private static Drawn drawn(Tree tree, Step.MeterCheck check) {
    return Drawn.of(drawings(tree).of(check, "Drawing: the leads"));
  }

  private static LeadDrawings drawings(Tree tree) {
    return new LeadDrawings(Optional.of(system(tree)));
  }

  private static ControlSystem system(Tree tree) {
    return Samples.STARTER.shared().circuits().get(Names.key(tree.system().orElseThrow().id())).base();
  }
}
