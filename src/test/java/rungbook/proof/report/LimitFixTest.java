package rungbook.proof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.proof.MadeUp;
import rungbook.source.Fix;
import rungbook.system.Quantity;
import rungbook.tree.Answer;
import rungbook.tree.Range;
import rungbook.tree.Readings;
import rungbook.tree.Step;
import rungbook.tree.Tree;
import rungbook.tree.Way;

/** Whatever a limit is moved to, the text still has one answer for each reading and no window turned around. */
class LimitFixTest {

  private static final BigDecimal DIGIT = new BigDecimal("0.1");
  private static final int TREES = 2_000;

  @Test
  void afterAnyMoveEachReadingHasOneAnswerAndEachWindowALowAndAHighEnd() {
    Random random = new Random(20);
    int moved = 0;
    for (int i = 0; i < TREES; i++) {
      Tree tree = tree(random);
      Step.MeterCheck check = (Step.MeterCheck) tree.steps().get(0);
      assertRoutes(check, tree.source().text());
      Optional<Fix> fix = LimitFix.fix(limit(check, random), check, DIGIT);
      moved += fix.isPresent() ? 1 : 0;
      fix.ifPresent(known -> assertRoutes(tree, known));
    }
    assertTrue(moved > TREES / 4, "only " + moved + " moved");
  }

  /** The numbers of an answer that ends one digit below the limit, or at it, or that has no number. */
  @ParameterizedTest
  @CsvSource({"0 to 19.9, 20 to 30, 0 to 17.9, 18 to 30", "under 20, 20 to 30, under 18, 18 to 30",
      "anything else, 20 to 30, anything else, 18 to 30", "0 to 20, over 20, 0 to 18, over 18"})
  void bothSidesOfTheLimitMoveTogether(String below, String above, String newBelow, String newAbove) {
    Tree tree = tree("20 to 30", List.of(below, above));
    assertEquals(tree("18 to 30", List.of(newBelow, newAbove)).source().text(), moved(tree, "20", "18"));
  }

  @Test
  void nothingMovesPastAnotherAnswerOrTheOtherEndOfTheWindow() {
    List<String> answers = List.of("under 20", "20 to 30", "over 30");
    assertEquals("", moved(tree("20 to 30", answers), "20", "30"));
    assertEquals("", moved(tree("20 to 30", answers), "20", "31"));
    assertEquals("", moved(tree("20 to 30", List.of("20 or more", "10 to 20", "under 10")), "20", "9"));
    assertEquals("", moved(tree("20 to 24", List.of("under 20", "20 or more")), "20", "25"));
  }

  private static String moved(Tree tree, String at, String to) {
    Step.MeterCheck check = (Step.MeterCheck) tree.steps().get(0);
    int upper = check.ways().get(0).written().startsWith("20") ? 0 : 1;
    return LimitFix.fix(limit(1 - upper, upper, new BigDecimal(at), new BigDecimal(to)), check, DIGIT)
        .map(fix -> Fix.apply(tree.source().text(), fix.edits())).orElse("");
  }

  private static Proof.Limit limit(int lower, int upper, BigDecimal at, BigDecimal better) {
    return new Proof.Limit(0, lower, upper, at, Optional.empty(), Optional.empty(), Optional.of(better), false, true,
        List.of());
  }

  private static Proof.Limit limit(Step.MeterCheck check, Random random) {
    List<Way> ways = check.ways().stream().filter(way -> way.answer() instanceof Answer.Within)
        .filter(way -> range(way).low().isPresent()).toList();
    Way upper = ways.get(random.nextInt(ways.size()));
    BigDecimal at = range(upper).low().orElseThrow();
    Readings readings = readings(check);
    int lower = readings.wayOf(readings.shown(at).orElseThrow() - 1).orElseThrow();
    return limit(lower, check.ways().indexOf(upper), at, tenths(1 + random.nextInt(600)));
  }

  private static Range range(Way way) {
    return ((Answer.Within) way.answer()).range();
  }

  private static void assertRoutes(Tree tree, Fix fix) {
    String text = Fix.apply(tree.source().text(), fix.edits());
    assertRoutes((Step.MeterCheck) read(text).steps().get(0), text);
  }

  private static void assertRoutes(Step.MeterCheck check, String text) {
    Readings readings = readings(check);
    assertEquals(List.of(), readings.gaps(), text);
    long end = readings.lowCount() - 1;
    for (Readings.Taken span : readings.fromLowToHigh()) {
      assertTrue(span.from() > end, text);
      end = span.to();
    }
    assertEquals(check.ways().size(), readings.fromLowToHigh().size(), text);
    check.expected().ifPresent(window -> assertTrue(
        window.low().orElseThrow().compareTo(window.high().orElseThrow()) < 0, text));
  }

  private static Readings readings(Step.MeterCheck check) {
    return Readings.of(check, MadeUp.tree("one", "").meter().scale(Quantity.AC_VOLTS).orElseThrow());
  }

  private static Tree tree(Random random) {
    List<BigDecimal> limits = random.ints(1 + random.nextInt(3), 20, 500).boxed().distinct().sorted()
        .map(LimitFixTest::tenths).toList();
    var answers = new ArrayList<String>(List.of("under " + limits.get(0)));
    for (int i = 1; i < limits.size(); i++) {
      boolean touching = random.nextBoolean();
      answers.add(limits.get(i - 1) + " to " + (touching ? limits.get(i) : limits.get(i).subtract(DIGIT)));
    }
    BigDecimal last = limits.get(limits.size() - 1);
    answers.add(last + " or more");
    Collections.shuffle(answers, random);
    BigDecimal high = last.add(tenths(random.nextInt(100) + 1));
    return tree(limits.get(random.nextInt(limits.size())) + " to " + high, answers);
  }

  private static BigDecimal tenths(int tenths) {
    return BigDecimal.valueOf(tenths, 1);
  }

  private static Tree tree(String expect, List<String> answers) {
    var ways = new StringBuilder();
    answers.forEach(answer -> ways.append("- ").append(answer).append(": [Way](#way)\n"));
    return MadeUp.tree("one", "## Volts\n\n```check\nmeasure: AC volts\nleads: A, B\nat: attic\nexpect: " + expect
        + " V\n```\n\n" + ways + "\n## Way\n\n```finding\nhealthy: yes\n```\n");
  }

  private static Tree read(String text) {
    return MadeUp.tree("one", text.substring(text.indexOf("## Volts")));
  }
}
