package rungbook.tree.reader;

import static java.util.stream.Collectors.toMap;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.system.Names;
import rungbook.tree.Shared;
import rungbook.tree.Step;
import rungbook.tree.Target;
import rungbook.tree.Way;

class FragmentsTest {

  private static final String INNER = "---\ntitle: Inner\nexits: on, off\n---\n\n## Look\n\n```check\nlook: it\n"
      + "```\n\n- yes: [On](#on)\n- no: [Off](#off)\n\n"
      + "## On\n\n```exit\nanswer: on\n```\n\n## Off\n\n```exit\n```\n";
  private static final String OUTER = "---\ntitle: Outer\nexits: done\n---\n\n## Take inner\n\n```take\nfragment: "
      + "inner\n```\n\n- on: [Done](#done)\n- off: [Wait](#wait)\n\n"
      + "## Wait\n\n```task\nminutes: 5\n```\n\n- done: [Done](#done)\n\n## Done\n\n```exit\nanswer: done\n```\n";

  private static TreeReader.Read read(String steps, Map<String, String> fragments) {
    Map<String, Document> documents = fragments.entrySet().stream().collect(toMap(entry -> Names.key(entry.getKey()),
        entry -> DocumentReader.read(new Source("shared/fragments/" + entry.getKey() + ".md", entry.getValue()))));
    Shared shared = new Shared(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), documents, Set.of("other"));
    return TreeReader.read("t",
        DocumentReader.read(new Source("trees/t.md", "---\ntitle: T\ncomplaint: C\n---\n\n" + steps)), shared);
  }

  private static List<String> codes(TreeReader.Read read) {
    return read.problems().stream().map(problem -> problem.source().name().replaceAll(".*/", "") + " " + problem.code())
        .toList();
  }

  private static String take(String heading, String fragment, String ways) {
    return "## " + heading + "\n\n```take\nfragment: " + fragment + "\n```\n\n" + ways + "\n\n";
  }

  private static final String END = "## End\n\n```finding\nhealthy: yes\n```\n";

  @Test
  void stepsStandBehindTheTreesOwnAndExitsLeadToTheTakersWays() {
    TreeReader.Read read = read(take("Take", "inner", "- on: [End](#end)\n- off: [Other](other.md)") + END,
        Map.of("inner", INNER));
    assertEquals(List.of(), codes(read));
    assertEquals(List.of("take", "end", "take--look"), read.tree().steps().stream().map(Step::id).toList());
    assertEquals(new Target.ToStep(2), read.tree().steps().get(0).ways().get(0).target());
    assertEquals(List.of(new Target.ToStep(1), new Target.ToTree("other", java.util.Optional.empty())),
        read.tree().steps().get(2).ways().stream().map(Way::target).toList());
    assertEquals("shared/fragments/inner.md", read.tree().steps().get(2).source().name());
  }

  @Test
  void fragmentsWithinFragmentsHandBackOneByOne() {
    TreeReader.Read read = read(take("Take", "outer", "- done: [End](#end)") + END,
        Map.of("inner", INNER, "outer", OUTER));
    assertEquals(List.of(), codes(read));
    assertEquals(List.of("take", "end", "take--take-inner", "take--wait", "take--take-inner--look"),
        read.tree().steps().stream().map(Step::id).toList());
    assertEquals(List.of(new Target.ToStep(1), new Target.ToStep(3)),
        step(read, "take--take-inner--look").ways().stream().map(Way::target).toList());
  }

  private static Step step(TreeReader.Read read, String id) {
    return read.tree().steps().stream().filter(step -> step.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void sameFragmentTakenTwiceIsTwoSetsOfSteps() {
    TreeReader.Read read = read(
        take("First", "inner", "- on: [Second](#second)\n- off: [End](#end)")
            + take("Second", "inner", "- on: [End](#end)\n- off: [End](#end)") + END,
        Map.of("inner", INNER));
    assertEquals(List.of("first", "second", "end", "first--look", "second--look"),
        read.tree().steps().stream().map(Step::id).toList());
    assertEquals(new Target.ToStep(1), step(read, "first--look").ways().get(0).target());
    assertEquals(new Target.ToStep(2), step(read, "second--look").ways().get(0).target());
  }

  @Test
  void wayOfATakerThatNoExitUsesIsStillLookedAt() {
    assertEquals(List.of("t.md unknown-step", "t.md exit-unknown"),
        codes(read(take("Take", "inner", "- on: [End](#end)\n- off: [End](#end)\n- half: [Nowhere](#nowhere)") + END,
            Map.of("inner", INNER))));
  }

  @Test
  void slipInAnExitIsReportedOnce() {
    assertEquals(List.of("inner.md exit-undeclared"),
        codes(read(take("Take", "inner", "- on: [End](#end)\n- off: [End](#end)") + END,
            Map.of("inner", INNER.replace("answer: on", "answer: onn")))).stream().distinct().toList());
  }

  @Test
  void circlesOfFragmentsEnd() {
    assertEquals(List.of("outer.md fragment-circle"), codes(read(take("Take", "outer", "- done: [End](#end)") + END,
        Map.of("outer",
            OUTER.replace("fragment: inner", "fragment: outer").replace("- on:", "- done:")
                .replace("- off: [Wait](#wait)\n", "")
                .replaceAll("(?s)## Wait.*?## Done", "## Done")))));
  }

  @Test
  void fragmentsThatMultiplyAtEveryTurnAreStopped() {
    String tripling = "---\ntitle: D\nexits: done\n---\n\n" + take("One", "next", "- done: [Two](#two)")
        + take("Two", "next", "- done: [Three](#three)") + take("Three", "next", "- done: [Done](#done)")
        + "## Done\n\n```exit\nanswer: done\n```\n";
    Map<String, String> fragments = java.util.stream.IntStream.range(0, 40).boxed()
        .collect(toMap(n -> "f" + n, n -> tripling.replace("fragment: next", "fragment: f" + (n + 1))));
    TreeReader.Read read = read(take("Take", "f0", "- done: [End](#end)") + END, fragments);
    assertEquals(Set.of("too-many-steps", "fragments-too-deep"),
        read.problems().stream().map(problem -> problem.code().name()).filter(code -> code.contains("too"))
            .collect(java.util.stream.Collectors.toSet()));
  }
}
