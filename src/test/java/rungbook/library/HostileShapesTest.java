package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import rungbook.library.WholeWay.Done;

/**
 * Shapes that made a check, a page or a pack slow or endless: each is done in a moment or refused, and its answer has a
 * bounded size. With {@code -Drungbook.short=true} texts have a quarter of the length, those of systems an eighth;
 * chains keep theirs, since they go to the limit of steps.
 */
@Tag("slow")
class HostileShapesTest {

  private static final int SHARE = ShortRun.IS ? 4 : 1;

  /**
   * Processor time of one text, in times that of a sound tree on the same machine: about a second where
   * {@code docs/figures.md} was measured.
   */
  private static final double MOST = 8;

  private static final double MOST_OF_CHAIN = 16;

  private static final int SYSTEM_LINES = ShortRun.IS ? 1_000 : 8_000;
  private static final int LONGEST_ANSWER = 12_000_000;
  private static final String TREE = "trees/hostile.md";
  private static final String SOUND = "trees/no-cooling-blower-runs.md";
  private static final String SYSTEM = "shared/systems/split-cooling-gas-furnace.md";
  private static final String FRONT = "---\ntitle: T\ncomplaint: C\n---\n\n";
  private static final String END = "\n## End\n\n```finding\nhealthy: yes\n```\n";
  private static final int MOST_BYTES = 3_900_000 / SHARE;

  /** A tree with a shape repeated in its first step, as often as fits. */
  private static String tree(String shape, int times) {
    return FRONT + "## Start\n\n```check\nlook: lamp\n```\n\n"
        + shape.repeat(Math.min(times, MOST_BYTES / shape.length())) + "\n\n- yes: [End](#end)\n- no: [End](#end)\n"
        + END;
  }

  private static String chain(int steps, String way) {
    return IntStream.range(0, steps)
        .mapToObj(i -> "## S" + i + "\n\n```check\nlook: lamp\n```\n\n- yes: [On](#"
            + (i + 1 < steps ? "s" + (i + 1) : "end") + ")\n- no: " + way + "\n\n")
        .collect(Collectors.joining("", FRONT, END));
  }

  private static DynamicTest test(String name, String path, String text) {
    return test(name, path, text, MOST);
  }

  private static DynamicTest test(String name, String path, String text, double most) {
    return DynamicTest.dynamicTest(name, () -> {
      Done done = WholeWay.of(path, text).go();
      assertTrue(done.millis() < most * soundMillis, () -> done.millis() + " ms, a sound tree " + soundMillis);
      assertTrue(done.longest() < LONGEST_ANSWER, () -> done.longest() + " characters");
    });
  }

  /** Of a sound tree, once the program is warm. */
  private static long soundMillis;

  @BeforeAll
  static void warmUp() {
    soundMillis = IntStream.range(0, 6)
        .mapToLong(i -> WholeWay.of(SOUND, titled(i)).go().millis()).min().orElseThrow();
  }

  /** A map with another title is drawn again. */
  private static String titled(int number) {
    return StarterLibrary.TEXT.texts().get(SOUND).text().replaceFirst("\ntitle: ", "$0" + number + " ");
  }

  @TestFactory
  Stream<DynamicTest> repeatedShapesInAStep() {
    return Stream
        .of("- a\n", "- a\n\n", "[x][]\n\n", "[x][y]", "---\n", "```\n", "```\n\n", "&amp; b\n\n", "<http://a.b>\n\n",
            "<http://a.b> ", "![a](b)\n\n",
            "![![a](b)](c)\n\n", "![".repeat(400) + "a" + "](b)".repeat(400) + "\n\n", "### H\n\n", "# ", "x\n===\n",
            "1. a\n", "> a\n\n", "> a\n", "- ", "* a\n  * b\n    * c\n",
            "a  \n", "| a | b |\n|---|---|\n| c | d |\n\n", "| a ", "**a**\n\n", "`a`\n\n", "a\\\n", "[a]: b\n\n",
            "[a]: b\n", "<b>\n\n", "<!-- a\n\n", "&#x26; ", "*a _b ", "\u202e", "\u0000",
            "[](" + " ".repeat(55), "<!-- " + "a ".repeat(4_500) + "\n\n",
            "[a](b \"" + "c ".repeat(4_500) + "\")\n\n", "<a" + " b".repeat(4_500) + "\n\n", "x\n\n", "\n", "\t", " ",
            "~~~\na\n~~~\n\n", "```check\n```\n\n",
            "```text\nx\n```\n\n", "- yes: [End](#end)\n", "- 1 to 2 V: [End](#end)\n", "\r", "-\n", "a:b\n")
        .map(shape -> test("step of " + shape.substring(0, Math.min(12, shape.length())).replace("\n", "¶"), TREE,
            tree(shape, 900_000 / SHARE)));
  }

  @TestFactory
  Stream<DynamicTest> linesOfBlocks() {
    return Stream
        .of("look: a\n", "x{n}: a\n", "look: \"a\"\n", "open: a, b, c\n", "? a\n", "- a\n", "a: [b, c]\n",
            "a: {b: c}\n", "x{n}: \"b\"\n", "cautions: x{n}\n")
        .map(line -> test("lines " + line.strip(), TREE,
            FRONT + "## Start\n\n```check\n" + repeated(line, 60_000 / SHARE) + "```\n" + END));
  }

  @TestFactory
  Stream<DynamicTest> longValues() {
    return Stream
        .of("look: " + "a, ".repeat(100_000), "look: " + "a ".repeat(100_000), "cautions: " + "x, ".repeat(50_000),
            "measure: " + "x".repeat(100_000),
            "leads: " + "x, ".repeat(100_000), "minutes: " + "9".repeat(100_000), "with: " + "a b, ".repeat(50_000),
            "at: \"" + "a\\n".repeat(100_000) + "\"",
            "a: " + "[".repeat(100_000), "expect: " + "1 to ".repeat(50_000),
            "open: " + IntStream.range(0, 50_000).mapToObj(i -> "n" + i).collect(Collectors.joining(", ")),
            "quiet: " + IntStream.range(0, 50_000).mapToObj(i -> "unknown-n" + i).collect(Collectors.joining(", ")),
            "quiet: " + "because".repeat(20_000), "quiet: " + "html-shown-as-text, ".repeat(50_000) + "because x")
        .map(line -> test("value " + line.substring(0, 14), TREE,
            FRONT + "## Start\n\n```check\n" + line + "\n```\n\n- yes: [End](#end)\n" + END));
  }

  @TestFactory
  Stream<DynamicTest> chains() {
    return Stream.of(ofSteps("chain of 1,999 steps", chain(1_999, "[E](#end)")),
        ofSteps("chain of 1,500 steps", chain(1_500, "[E](#end)")),
        ofSteps("chain of 6,000 steps", chain(6_000, "[E](#end)")),
        ofSteps("chain with circles", chain(1_990, "[E](#s0)")),
        ofSteps("broken links", chain(1_990, "[E](#gone)")),
        ofSteps("a quiet line and HTML in every step", chain(1_990, "[E](#end)")
            .replace("lamp\n", "lamp\nquiet: html-shown-as-text, no-such-code, because x\n")
            .replace("- yes", "<b>\n\n- yes")),
        ofSteps("other trees", chain(1_990, "[E](gone.md#x)")),
        ofSteps("2,000 tables", tree("| a | b |\n|---|---|\n| c | d |\n\n", 2_000)),
        ofSteps("80,000 headings", FRONT + "## H\n\n".repeat(80_000)));
  }

  private static DynamicTest ofSteps(String name, String text) {
    return test(name, TREE, text, MOST_OF_CHAIN);
  }

  @TestFactory
  Stream<DynamicTest> systems() {
    return Stream
        .of("parts|x{n}: contact, R to C, closed when " + "not ".repeat(5_000) + "lamp on\n",
            "parts|x: contact, R to C, closed when " + "a or ".repeat(20_000) + "b\n",
            "parts|x: load, " + " ".repeat(20) + "a" + " ".repeat(100_000) + "b, R to C\n",
            "parts|x{n}: load, 24 V, R to C\n", "faults|x{n}: open gone{n}\n",
            "faults|x{n}: short " + "a to ".repeat(50) + "b\n",
            "faults|x: \"short " + "a to ".repeat(50_000) + "\\n\"\n", "points|x{n}: at bench\n",
            "locations|x{n}: from x{n+1}, walk 1 min\n", "sights|x{n}: when lamp on\n",
            "controls|x{n}: a, b, at bench\n", "states|x{n}: when lamp on\n", "cables|x{n}: R, 18 AWG, 10 ft\n",
            "parts|x: load, " + "9".repeat(100_000) + " V, R to C\n")
        .map(shape -> shape.split("\\|"))
        .map(shape -> test("system " + shape[1].substring(0, Math.min(40, shape[1].length())).strip(), SYSTEM,
            StarterLibrary.TEXT.texts().get(SYSTEM).text() + "\n```" + shape[0] + "\n"
                + repeated(shape[1], Math.min(SYSTEM_LINES, MOST_BYTES / 2 / shape[1].length())) + "```\n"));
  }

  private static String repeated(String line, int times) {
    return line.contains("{n")
        ? IntStream.range(0, times).mapToObj(n -> line.replace("{n}", "" + n).replace("{n+1}", "" + (n + 1)))
            .collect(Collectors.joining())
        : line.repeat(times);
  }
}
