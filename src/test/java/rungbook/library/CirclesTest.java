package rungbook.library;

import static java.time.Duration.ofSeconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rungbook.source.Problem;
import rungbook.source.Source;

/** What {@link Circles} needs beside the rule's own case: other trees, as they are now, in bounded time. */
class CirclesTest {

  private static final int CHECKS = 60;

  private static final String LEADS_ON = """
      ---
      title: %s
      complaint: Something is wrong.
      ---

      ## %s

      ```check
      look: something
      ```

      - yes: [On](%s.md)
      - no: [Here](#here)

      ## Here

      ```finding
      healthy: yes
      ```
      """;

  private static String leading(String title, String to) {
    return LEADS_ON.formatted(title, title, to);
  }

  private static Library library(String... idsAndTexts) {
    TreeMap<String, Source> texts = new TreeMap<>();
    for (int i = 0; i < idsAndTexts.length; i += 2) {
      String path = "trees/" + idsAndTexts[i] + ".md";
      texts.put(path, new Source(path, idsAndTexts[i + 1]));
    }
    return LibraryCompiler.compile(new LibraryText(texts, new TreeMap<>(), List.of()));
  }

  private static List<String> circles(List<Problem> problems) {
    return problems.stream().filter(problem -> problem.code().name().equals("trees-circle"))
        .map(problem -> problem.source().name()).toList();
  }

  @Test
  void aTreeIsOutdatedByEachTreeThatItsWaysLeadTo() {
    Library library = library("a", leading("A", "b"), "b", leading("B", "c"), "c", leading("C", "c"), "d",
        leading("D", "d"));
    assertEquals(Set.of("trees/a.md", "trees/b.md", "trees/c.md"), library.leadingTo(Set.of("trees/c.md")));
  }

  @Test
  void aTreeThatLeadsToItselfIsACircle() {
    assertEquals(List.of("trees/a.md"), circles(library("a", leading("A", "a")).found().shown()));
  }

  @Test
  void aCompiledTreeIsUsedOnlyWhileItsTextIsTheSame() {
    Library before = library("a", leading("A", "b"), "b", leading("B", "none"));
    TreeMap<String, Source> texts = new TreeMap<>(before.text().texts());
    texts.put("trees/b.md", new Source("trees/b.md", leading("B", "a")));
    Library now = before.with(new LibraryText(texts, new TreeMap<>(), List.of()), before.trees());
    Source a = texts.get("trees/a.md");
    assertEquals(List.of(), circles(LibraryCompiler.compile("a", a, before).problems()));
    assertEquals(List.of("trees/a.md"), circles(LibraryCompiler.compile("a", a, now).problems()));
  }

  /** Two trees that ask the same 60 questions, each of which may be answered in two ways: 2 to the 60 paths. */
  @Test
  void theSearchEndsWithMorePathsThanAnybodyCanWalk() {
    assertTimeoutPreemptively(ofSeconds(60), () -> library("a", asking("A", "b"), "b", asking("B", "c"), "c",
        asking("C", "a")));
  }

  private static String asking(String title, String to) {
    StringBuilder text = new StringBuilder("---\ntitle: " + title + "\ncomplaint: Something.\n---\n");
    for (int i = 0; i < CHECKS; i++) {
      text.append("\n## S").append(i).append("\n\n```check\nlook: thing ").append(i).append("\n```\n\n- yes: [Yes](#y")
          .append(i).append(")\n- no: [No](#s").append(i + 1).append(")\n\n## Y").append(i)
          .append("\n\n```task\nopen: lid ").append(i).append("\n```\n\n- done: [On](#s").append(i + 1).append(")\n");
    }
    return text.append("\n## S").append(CHECKS).append("\n\n```task\nclose: lid\n```\n\n- done: [On](").append(to)
        .append(".md)\n").toString();
  }
}
