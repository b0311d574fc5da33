package rungbook.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungbook.source.Problem;
import rungbook.source.Source;

class FrontMatterTest {

  private static Document read(String text) {
    return DocumentReader.read(new Source("x.md", text));
  }

  @Test
  void standsBetweenTwoLinesOfHyphens() {
    Document document = read("---\ntitle: Fuse\n---\n\n## Step\n");
    assertEquals("Fuse", document.front("title").orElseThrow().value());
    assertEquals("Step", document.sections().get(0).title());
  }

  @Test
  void windowsLineEndsChangeNothing() {
    Document document = read(
        "---\r\ntitle: Fuse\r\n---\r\n\r\n## Step\r\n\r\n```check\r\nlook: fuse\r\n```\r\n\r\n- yes: [A](#a)\r\n- "
            + "no: [B](#b)\r\n");
    assertEquals(List.of(), document.problems());
    assertEquals("Fuse", document.front("title").orElseThrow().value());
    assertEquals("fuse", document.sections().get(0).blocks().get(0).entries().get(0).value());
    assertEquals(List.of("yes", "no"), document.sections().get(0).ways().stream().map(ParsedWay::answer).toList());
  }

  @Test
  void leftOpenItIsOneProblemAndTheRestIsStillRead() {
    Document document = read("---\ntitle: Fuse\n\n## Step\n");
    assertEquals(List.of("front-matter-open"),
        document.problems().stream().map(problem -> problem.code().name()).toList());
    assertEquals(1, document.sections().size());
  }

  @Test
  void textWithoutItHasNone() {
    Document document = read("## Step\n");
    assertTrue(document.front().isEmpty());
    assertTrue(document.problems().isEmpty());
  }
}
