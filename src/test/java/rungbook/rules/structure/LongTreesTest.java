package rungbook.rules.structure;

import static java.time.Duration.ofSeconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.markdown.DocumentReader;
import rungbook.rules.api.Rule;
import rungbook.rules.api.RuleContext;
import rungbook.rules.flow.Graph;
import rungbook.source.LimitSettings;
import rungbook.source.Problem;
import rungbook.source.Problems;
import rungbook.source.Source;
import rungbook.source.TextLimits;
import rungbook.source.Witness;
import rungbook.tree.SingleTree;
import rungbook.tree.reader.TreeReader;

/** Trees far longer than anyone writes neither overflow a stack nor take more than a moment. */
@Tag("slow")
class LongTreesTest {

  private static final int STEPS = 20_000;
  private static final TextLimits LONG = TextLimits.of(new LimitSettings(limit -> Optional.of("1000000")));

  /** @param next the step that a step's {@code no} leads to; {@code yes} leads to the one after it */
  private static RuleContext chain(int steps, IntFunction<Integer> next) {
    String text = IntStream.range(0, steps)
        .mapToObj(i -> "## S" + i + "\n\n```check\nask: one\n```\n\n- yes: [On](#s" + Math.min(i + 1, steps - 1)
            + ")\n- no: [Back](#s" + next.apply(i) + ")\n\n")
        .collect(Collectors.joining("", "---\ntitle: T\ncomplaint: C\n---\n\n", "## End\n"));
    return context(text);
  }

  private static RuleContext context(String text) {
    var document = DocumentReader.read(new Source("trees/t.md", text), LONG);
    return RuleContext.of(TreeReader.read("t", document, SingleTree.NOTHING_SHARED).tree());
  }

  private static List<Problem> inspect(Rule rule, RuleContext context) {
    Problems out = new Problems();
    rule.inspect(context, out);
    return out.inReadingOrder();
  }

  @Test
  void oneRoundThroughEveryStepIsFound() {
    RuleContext context = chain(STEPS, i -> i == STEPS - 1 ? 0 : Math.min(i + 2, STEPS - 1));
    List<Problem> problems = assertTimeoutPreemptively(ofSeconds(20), () -> inspect(new PathCircle(), context));
    Witness.Path path = (Witness.Path) problems.get(0).witness().orElseThrow();
    assertEquals(path.stops().get(0).step(), path.stops().get(path.stops().size() - 1).step());
  }

  @Test
  void circlesThatShareStepsAreReportedOneAtATime() {
    RuleContext context = chain(STEPS, i -> 0);
    assertEquals(2, assertTimeoutPreemptively(ofSeconds(20), () -> inspect(new PathCircle(), context)).size(),
        "the last step alone, and all the others");
  }

  @Test
  void everyWitnessIsACircleOfRealWays() {
    RuleContext context = chain(60, i -> i % 7 == 3 ? i - 3 : Math.min(i + 2, 59));
    Graph graph = context.graph();
    for (Problem problem : inspect(new PathCircle(), context)) {
      List<Integer> steps = ((Witness.Path) problem.witness().orElseThrow()).stops().stream()
          .map(stop -> Integer.parseInt(stop.step().substring(1))).toList();
      assertEquals(steps.get(0), steps.get(steps.size() - 1));
      for (int i = 0; i + 1 < steps.size(); i++) {
        int to = steps.get(i + 1);
        assertEquals(true, IntStream.of(graph.targets(steps.get(i))).anyMatch(target -> target == to));
      }
    }
  }

  @Test
  void thousandsOfUnreachedStepsTakeAMoment() {
    String islands = IntStream.range(0, STEPS)
        .mapToObj(i -> "## S" + i + "\n\n```task\nminutes: 1\n```\n\n- done: [S](#s" + i + ")\n\n")
        .collect(Collectors.joining("",
            "---\ntitle: T\ncomplaint: C\n---\n\n## First\n\n```finding\nhealthy: yes\n```\n\n", ""));
    RuleContext context = context(islands);
    assertEquals(STEPS, assertTimeoutPreemptively(ofSeconds(20), () -> inspect(new Unreached(), context)).size());
  }
}
