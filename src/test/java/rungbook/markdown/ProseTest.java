package rungbook.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.source.Source;

class ProseTest {

  private static final Prose.Targets SAFE = new Prose.Targets() {
    @Override
    public Optional<String> picture(String target) {
      return target.startsWith("pictures/") ? Optional.of("/p/" + target) : Optional.empty();
    }

    @Override
    public Optional<String> link(String target) {
      return Prose.Targets.safeLink(target);
    }
  };

  private static String introduction(String text) {
    return Prose.of(DocumentReader.read(new Source("trees/t.md", text)), SAFE).introduction();
  }

  @Test
  void leavesOutHeadingsBlocksAndWaysOn() {
    Document document = DocumentReader.read(new Source("trees/t.md", """
        ---
        title: t
        ---

        Before.

        ## Look

        Open the door.

        ```check
        look: lamp lit
        ```

        - a plain list
        - stays

        Then look.

        - yes: [On](#on)
        - no: [Off](#off)

        ## A chapter

        - point: [not a way](https://example.org/x)
        """));
    Prose prose = Prose.of(document, SAFE);
    assertEquals("<p>Before.</p>\n", prose.introduction());
    assertEquals("<p>Open the door.</p>\n<ul>\n<li>a plain list</li>\n<li>stays</li>\n</ul>\n<p>Then look.</p>\n",
        prose.of(document.sections().get(0)));
    assertEquals("<ul>\n<li>point: <a href=\"https://example.org/x\">not a way</a></li>\n</ul>\n",
        prose.of(document.sections().get(1)));
  }

  @ParameterizedTest
  @ValueSource(strings = {
      "[x](javascript:alert(1))", "[x](JaVaScRiPt:alert(1))", "<javascript:alert(1)>", "[x](data:text/html,y)",
      "[x]( java&#115;cript:alert(1))",
      "[x][r]\n\n[r]: javascript:alert(1)", "![x](javascript:alert(1))", "![x](http://example.org/x.png)",
      "![x][r]\n\n[r]: data:image/svg+xml,y",
      "<script>alert(1)</script>", "a <img src=x onerror=alert(1)> b", "[x](vbscript:y)",
      "![x\" onerror=\"y](pictures/a.png)",
      "[x](https://example.org/\"onmouseover=\"y)", "<a href=\"javascript:y\">z</a>"})
  void nothingLiveComesThrough(String text) {
    String html = introduction(text);
    String live = html.replaceAll("&lt;.*?&gt;", "");
    assertFalse(live.matches("(?is).*(href|src)=\"\\s*(javascript|data|vbscript|http:).*"), html);
    assertFalse(live.replaceAll("\"[^\"]*\"", "\"\"").matches("(?is).*<[^>]*\\son\\w+=.*"), html);
    assertFalse(live.contains("<script") || live.contains("<img src=x"), html);
  }

  @Test
  void picturesBecomeWhatThePageSays() {
    assertEquals("<p><img src=\"/p/pictures/board.svg\" alt=\"the board\" /></p>\n",
        introduction("![the board](pictures/board.svg)"));
    assertTrue(introduction("![the board](elsewhere.svg)").contains("the board"));
  }

  @Test
  void wholeKeepsBlocksAsTheyStand() {
    Document document = DocumentReader.read(new Source("shared/meters/m.md", "Text.\n\n```meter\nohms: 1\n```\n"));
    assertEquals("<p>Text.</p>\n<pre><code class=\"language-meter\">ohms: 1\n</code></pre>\n",
        Prose.of(document, SAFE).whole());
  }

  @Test
  void refusedShapesRenderAsNothing() {
    assertEquals("", introduction("> ".repeat(10_000) + "x"));
  }
}
