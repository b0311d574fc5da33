package rungbook.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.web.pages.NewTexts;

@Tag("server")
@QuarkusTest
class LiveApiTest {
  private static final String TREE = """
      ---
      title: T
      complaint: C
      ---

      ## Light

      ```check
      look: light
      ```

      A **bold** word.

      - yes: [On](#on)
      - no: [Off](#of)

      ## On

      ```finding
      healthy: yes
      ```
      """;

  @Test
  void aProblemHasItsPlaceItsSentenceAndItsHint() {
    check("trees/live.md", TREE).statusCode(200)
        .body("problems.code", hasItem("unknown-step"))
        .body("problems.find { it.code == 'unknown-step' }.line", equalTo(15))
        .body("problems.find { it.code == 'unknown-step' }.severity", equalTo("error"))
        .body("problems.find { it.code == 'unknown-step' }.hint", not(equalTo("")));
  }

  @Test
  void aKnownFixComesAsEditsOfTheText() {
    int at = TREE.indexOf("#of)");
    check("trees/live.md", TREE).statusCode(200)
        .body("problems.find { it.code == 'unknown-step' }.fix", equalTo("write `#on`"))
        .body("problems.find { it.code == 'unknown-step' }.edits", equalTo(java.util.List.of(
            java.util.Map.of("from", at, "to", at + 3, "text", "#on"))));
  }

  @Test
  void whatTheTextSilencesIsCounted() {
    String text = TREE.replace("A **bold** word.", "A <b>bold</b> word.").replace("```check\n",
        "```check\nquiet: html-shown-as-text, because it reads so\n");
    check("trees/live.md", text).body("problems.code", not(hasItem("html-shown-as-text"))).body("silenced", equalTo(2));
    check("trees/live.md", text.replace("html-shown-as-text", "html-shown-as-txt"))
        .body("problems.find { it.code == 'unknown-code' }.fix", equalTo("write `html-shown-as-text`"))
        .body("silenced", equalTo(0));
  }

  @Test
  void theTextThatANewTreeBeginsWithHasNoProblem() {
    check("trees/live.md", NewTexts.tree("No heat: \"cold\" house", "It's cold", "")).body("problems", hasSize(0));
    check("trees/live.md", NewTexts.tree("No heat", "Cold # air", "split-cooling-gas-furnace")).body("problems",
        hasSize(0));
  }

  @Test
  void newSharedTextsHaveNoProblemEither() {
    for (var folder : new String[] {"shared/cautions/", "shared/qualifications/", "shared/meters/",
        "shared/fragments/"}) {
      check(folder + "live.md", NewTexts.shared(folder, "Something new")).body("problems", hasSize(0));
    }
    check("shared/words.md", NewTexts.WORDS).body("problems", hasSize(0));
  }

  @Test
  void aListOfWordsIsCheckedWhileItIsWritten() {
    check("shared/words.md", NewTexts.WORDS.replace("gas shutoff", "")).body("problems.code",
        hasItem("word-row-unreadable"));
  }

  @Test
  void checkingSavesNothing() {
    check("trees/live-unsaved.md", TREE);
    given().get("/api/documents/trees/live-unsaved.md").then().statusCode(404);
  }

  @Test
  void thePreviewIsTheStepUnderTheCursor() {
    preview(12).body("title", equalTo("Light")).body("html", containsString("A <strong>bold</strong> word."));
    preview(18).body("title", equalTo("On"));
    preview(2).body("title", equalTo("T"));
    preview(100_000).body("title", equalTo("On"));
  }

  @Test
  void theWordsAreTheSystemsOwn() {
    given().get("/api/words?system=split-cooling-gas-furnace").then()
        .body("values.at", hasItems("furnace", "thermostat")).body("values.leads", hasItems("R", "C", "Y"))
        .body("values.cautions", hasItem("live control voltage")).body("values.set", hasItem("thermostat cooling"))
        .body("keys.check", hasItems("measure", "expect", "quiet"))
        .body("values.quiet", hasItems("check-tells-nothing", "html-shown-as-text"))
        .body("values.quiet", not(hasItem("unknown-step")));
    given().get("/api/words?system=nothing").then().body("values.at", equalTo(null)).body("values.measure",
        hasItem("AC volts"));
  }

  @Test
  void searchLooksAtComplaints() {
    given().get("/api/library?q=blower stop").then().body("title", hasItem("Blower runs all the time"));
    given().get("/api/library?q=zebra").then().body("", hasSize(0));
  }

  @Test
  void aMapIsAPictureOfItsOwn() {
    given().get("/api/map/trees/no-cooling-blower-runs.md").then().statusCode(200).contentType("image/svg+xml")
        .body(containsString("<svg"));
    given().get("/api/map/shared/cautions/gas.md").then().statusCode(404);
  }

  @Test
  void hostileTextsAreAnsweredAndNotObeyed() {
    check("trees/live.md", ">".repeat(10_000) + " deep").statusCode(200).body("problems", not(hasSize(0)));
    check("trees/live.md", "- ".repeat(10_000) + "deep").statusCode(200).body("problems", not(hasSize(0)));
    check("trees/live.md", "---\na: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n---\n").statusCode(200).body("problems",
        not(hasSize(0)));
    check("trees/live.md", "").statusCode(200).body("problems.code", hasItem("file-empty"));
    check("trees/live.md", "x".repeat((4 << 20) + 1)).statusCode(413);
  }

  private static ValidatableResponse check(String path, String text) {
    return given().contentType("application/json").body(Map.of("path", path, "text", text)).when().post("/api/check")
        .then();
  }

  private static ValidatableResponse preview(int line) {
    return given().contentType("application/json").body(Map.of("path", "trees/live.md", "text", TREE, "line", line))
        .when().post("/api/preview").then().statusCode(200);
  }
}
