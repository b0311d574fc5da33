package rungbook.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rungbook.pack.Verify.Flaw;
import rungbook.pack.Verify.Verdict;
import rungbook.pack.page.Frame;

/** Packs changed on purpose, each with its digest made anew over the change. */
class ForgedPackTest {

  private static final Pack PACK = Samples.starter("no-cooling-blower-runs");
  private static final String KNOWN = PACK.shortDigest();
  private static final String PLACE = "<code class=\"digest\">" + KNOWN + "</code>";

  static Stream<Arguments> forgeries() {
    return Stream.of(
        forgery("a space in the markup, and the known digest there", Flaw.BEGINNING,
            page -> page.replace(PLACE, "<code class=\"digest\" >" + KNOWN.replace(' ', '\u00a0') + "</code>")),
        forgery("no short digest at all", Flaw.BEGINNING,
            page -> page.replace("<div><dt>Digest</dt><dd>" + PLACE + "</dd></div>", "")),
        forgery("five more short digests", Flaw.TWO_DIGESTS,
            page -> page.replace("<main>",
                "<main>" + "<code class=\"digest\">1234 5678 1234 5678 1234 5678</code>".repeat(5))),
        forgery("one more, written another way", Flaw.TWO_DIGESTS,
            page -> page.replace("<main>", "<main><b hidden\nCLASS = 'big digest'>1234 5678 1234 5678 1234 5678</b>")),
        forgery("a second place for the whole digest", Flaw.TWO_DIGESTS,
            page -> page.replace("<main>", "<main><meta name=rungbook-digest content=\"" + "1".repeat(64) + "\">")),
        forgery("a comment behind the end, as a search for a digest would add", Flaw.STYLE_OR_SCRIPT,
            page -> page + "<!-- 0000000000000000 -->"),
        forgery("a comment before the beginning", Flaw.BEGINNING, page -> "<!-- -->" + page),
        forgery("an added script", Flaw.STYLE_OR_SCRIPT,
            page -> page.replace("</footer>", "</footer><SCRIPT>document.title = 'x'</SCRIPT>")),
        forgery("another script in the place of the pack's", Flaw.STYLE_OR_SCRIPT,
            page -> page.replace("'use strict';", "'use strict';alert(1);")),
        forgery("another style", Flaw.STYLE_OR_SCRIPT, page -> page.replace("<style>", "<style>dl{display:none}")),
        forgery("a policy that allows everything", Flaw.STYLE_OR_SCRIPT,
            page -> page.replace("default-src 'none'", "default-src *")),
        forgery("another title block before the pack's own", Flaw.BEGINNING,
            page -> page.replace("<header>", "<header>" + PLACE + "</header><header>")),
        forgery("thousands of cells", Flaw.BEGINNING,
            page -> page.replace("<dl class=\"block\">",
                "<dl class=\"block\">\n" + "<div><dt>a</dt><dd>b</dd></div>\n".repeat(100_000))));
  }

  private static Arguments forgery(String name, Flaw flaw, UnaryOperator<String> change) {
    return Arguments.of(name, flaw, change);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("forgeries")
  void isAlteredThoughItsDigestWasMadeAnew(String name, Flaw flaw, UnaryOperator<String> change) {
    String page = Samples.text(PACK.inFolder());
    String changed = change.apply(page);
    assertNotEquals(page, changed, name);
    assertEquals(new Verdict.Altered(flaw), Verify.of(Forgery.sealed(changed, PACK.digest())), name);
  }

  /** No digest can tell who wrote a text: such a pack is only known by its other digest. */
  @Test
  void changedWindowWithANewDigestHasAnotherDigestThanTheKnownOne() {
    String changed = Samples.text(PACK.inFolder()).replace("window\">20 to 30", "window\">20 to 90");
    assertNotEquals(Samples.text(PACK.inFolder()), changed);
    Verdict.Intact intact = assertInstanceOf(Verdict.Intact.class, Verify.of(Forgery.sealed(changed, PACK.digest())));
    assertNotEquals(KNOWN, intact.shortDigest());
  }

  @Test
  void changedWindowUnderTheKnownDigestIsAltered() {
    String changed = Samples.text(PACK.inFolder()).replace("window\">20 to 30", "window\">20 to 90");
    byte[] sealed = Forgery.sealed(changed, PACK.digest());
    String digest = Forgery.digest(changed, PACK.digest());
    String shown = new String(sealed, StandardCharsets.UTF_8).replace(Forgery.grouped(digest), KNOWN);
    assertEquals(new Verdict.Altered(Flaw.SHORT_DIGEST), Verify.of(shown.getBytes(StandardCharsets.UTF_8)));
  }

  /** A text that speaks of digests is no forgery. */
  @Test
  void textOfATreeMayLookLikeADigest() {
    Pack pack = Samples.pack("""
        ---
        title: name="rungbook-digest" class="digest"
        complaint: <code class="digest">1234 5678 1234 5678 1234 5678</code>
        ---

        The `class="digest"` and <script>.

        ```digest
        class=digest
        ```

        ## Digest

        ```finding
        healthy: yes
        ```
        """, java.util.Map.of());
    Verdict.Intact intact = assertInstanceOf(Verdict.Intact.class, Verify.of(pack.bytes()));
    assertEquals("name=\"rungbook-digest\" class=\"digest\"", intact.title());
  }

  /** However much a file wants it, a verdict is quick and none throws. */
  @Test
  void verdictIsQuickOnFilesMadeToBeSlow() {
    List<String> slow = new ArrayList<>();
    for (String part : List.of("<a class=", "<", "<a ", "class=\"", "<div><dt>a</dt><dd>b</dd></div>\n",
        "rungbook-digest ", "\n", " ")) {
      slow.add(Samples.text(PACK.inFolder()).replace("<main>", "<main>" + part.repeat(300_000)));
      slow.add(Frame.BEFORE_DIGEST + part.repeat(300_000));
    }
    long before = System.nanoTime();
    slow.forEach(page -> assertFalse(Verify.of(page.getBytes(StandardCharsets.UTF_8)) instanceof Verdict.Intact));
    assertTrue(System.nanoTime() - before < 20_000_000_000L);
  }
}
