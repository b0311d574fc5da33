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
  private static final String TREE = """
      ---
      title: T
      ---

      Before *all*.

      ## Y at the board

      ```check
      look: light
      ```

      - not a way
      - but a list

      Red lead on **Y**, see [the drawing][d].

      - yes: [A](#a)
      - no: [B](#b)

      ## Notes

      Plain chapter.

      [d]: #drawing
      """;

  @Test
  void theIntroductionStopsAtTheFirstStep() {
    assertEquals("<p>Before <em>all</em>.</p>\n", prose(TREE).introduction());
  }

  @Test
  void aStepsProseHasNeitherItsBlockNorItsWaysOn() {
    var document = DocumentReader.read(new Source("trees/t.md", TREE));
    var html = Prose.of(document, new Anywhere()).of(document.sections().get(0));
    assertEquals("""
        <ul>
        <li>not a way</li>
        <li>but a list</li>
        </ul>
        <p>Red lead on <strong>Y</strong>, see <a href="#drawing">the drawing</a>.</p>
        """, html);
  }

  @ParameterizedTest
  @ValueSource(strings = {"<script>alert(1)</script>", "a <b onclick=\"x()\">b</b>", "<img src=x onerror=alert(1)>", "<!-- x -->"})
  void htmlIsShownAsText(String hostile) {
    var html = prose(hostile).whole();
    assertFalse(html.contains(hostile), html);
    assertTrue(html.contains("&lt;"), html);
  }

  @ParameterizedTest
  @ValueSource(strings = {"[x](javascript:alert(1))", "<javascript:alert(1)>", "[x](<java\nscript:alert(1)>)", "[x][r]\n\n[r]: JaVaScRiPt:1",
    "![x](data:text/html,x)", "[x](vbscript:1)", "[x](&#106;avascript:1)"})
  void aTargetThatIsNotAllowedIsNoAddress(String hostile) {
    var html = prose(hostile, new Nowhere()).whole();
    assertFalse(html.contains("href"), html);
    assertFalse(html.contains("src="), html);
  }

  @Test
  void picturesComeFromWhereTheyAreSent() {
    assertEquals("<p><img src=\"/files/trees/board.png\" alt=\"the board\" /></p>\n", prose("![the board](board.png)").whole());
  }

  private static Prose prose(String text) {
    return prose(text, new Anywhere());
  }

  private static Prose prose(String text, Prose.Targets targets) {
    return Prose.of(DocumentReader.read(new Source("trees/t.md", text)), targets);
  }

  private static final class Anywhere implements Prose.Targets {
    @Override
    public Optional<String> link(String written) {
      return Optional.of(written);
    }

    @Override
    public Optional<String> picture(String written) {
      return Optional.of("/files/trees/" + written);
    }
  }

  private static final class Nowhere implements Prose.Targets {
    @Override
    public Optional<String> link(String written) {
      return Optional.empty();
    }

    @Override
    public Optional<String> picture(String written) {
      return Optional.empty();
    }
  }
}
