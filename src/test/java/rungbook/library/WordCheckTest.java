package rungbook.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.Source;

class WordCheckTest {

  private static final String LIST = "---\ntitle: Words\n---\n\n| avoid | use |\n|---|---|\n| wheel | blower wheel |\n";

  private static List<Problem> words(String... pathsAndTexts) {
    var texts = new TreeMap<String, Source>();
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      texts.put(pathsAndTexts[i], new Source(pathsAndTexts[i], pathsAndTexts[i + 1]));
    }
    return LibraryCompiler.compile(new LibraryText(texts, new TreeMap<>(), List.of())).found().shown().stream()
        .filter(problem -> problem.code().equals(Code.of("word-to-avoid"))).toList();
  }

  @Test
  void aLibraryWithoutAListAvoidsNothing() {
    assertEquals(List.of(), words("trees/a.md", "## Wheel\n"));
  }

  @Test
  void aHeadingThatAnotherTreeLinksToIsReportedWithoutAFix() {
    String tree = "## Wheel\n\n```finding\nrefer: x\n```\n";
    assertTrue(words("shared/words.md", LIST, "trees/a.md", tree).get(0).fix().isPresent());
    assertTrue(words("shared/words.md", LIST, "trees/a.md", tree, "trees/b.md", "- done: [x](a.md#wheel)\n").get(0)
        .fix().isEmpty());
    assertTrue(words("shared/words.md", LIST, "trees/a.md", tree, "trees/b.md", "- done: [x](a.md#wheels)\n").get(0)
        .fix().isPresent());
  }

  @Test
  void aBrokenListIsAProblemOfItsOwn() {
    assertEquals(List.of(), words("shared/words.md", ">".repeat(5_000), "trees/a.md", "## Wheel\n"));
  }
}
