package rungbook.web.pages;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;

/** Renames, copies, removes and brings back, and changes words everywhere, as a reader of the pages does it. */
@Tag("server")
@QuarkusTest
class ManagePageTest {
  private static final String CAUTION = """
      ---
      title: Wet floor
      level: caution
      hazard: A wet floor is slippery.
      avoid: Dry it first.
      ---

      Look %s.
      """;
  private static final String TREE = """
      ---
      title: %s
      complaint: The floor is wet
      ---

      ## Look

      ```check
      look: floor wet
      cautions: %s
      ```

      - yes: [Wet](#wet)
      - no: [Wet](#wet)

      ## Wet

      ```finding
      refer: a plumber
      ```
      """;
  private static final Pattern DIGEST = Pattern.compile("name=\"digest\" value=\"([0-9a-f]{64})\"");

  @Inject
  Store store;

  private static ValidatableResponse page(String address) {
    return given().accept("text/html").get(address).then();
  }

  private static String digest(String address) {
    var found = DIGEST.matcher(page(address).statusCode(200).extract().body().asString());
    assertTrue(found.find(), address);
    return found.group(1);
  }

  private void save(String path, String text) {
    var at = new DocumentPath(path);
    store.save(Save.written(at, store.head(at).map(Revision::number).orElse(0), text.getBytes(StandardCharsets.UTF_8),
        "Ida Marsh", "Written"));
  }

  private String text(String path) {
    return store.head(new DocumentPath(path)).filter(Revision::isThere).map(Revision::text).orElse("");
  }

  private int number(String path) {
    return store.head(new DocumentPath(path)).orElseThrow().number();
  }

  @Test
  void aFileIsRenamedWithAllThatNameIt() {
    save("shared/cautions/floor-one.md", CAUTION.formatted("down"));
    save("trees/manage-one.md", TREE.formatted("One", "floor one"));
    page("/manage/shared/cautions/floor-one.md").statusCode(200).body(allOf(containsString("1 text names it"),
        containsString("href=\"/edit/trees/manage-one.md?line=10\""), containsString("cautions: floor one")));
    var preview = "/manage/shared/cautions/floor-one.md?name=Slippery floor";
    page(preview).body(allOf(containsString("<code>shared/cautions/slippery-floor.md</code>"),
        containsString("1 text changes"), not(containsString("would find these errors"))));
    given().redirects().follow(false).formParam("name", "Slippery floor").formParam("digest", digest(preview))
        .formParam("author", "Ida Marsh").post("/manage/rename/shared/cautions/floor-one.md").then().statusCode(303)
        .header("Location", containsString("/text/shared/cautions/slippery-floor.md"));
    assertEquals(TREE.formatted("One", "slippery floor"), text("trees/manage-one.md"));
    assertEquals(CAUTION.formatted("down"), text("shared/cautions/slippery-floor.md"));
    assertEquals("", text("shared/cautions/floor-one.md"));
    page("/manage/shared/cautions/floor-one.md").statusCode(404);
  }

  @Test
  void whatWasNotLookedAtIsNotDone() {
    save("shared/cautions/floor-two.md", CAUTION.formatted("down"));
    var preview = "/manage/shared/cautions/floor-two.md?name=floor-three";
    var digest = digest(preview);
    save("trees/manage-two.md", TREE.formatted("Two", "floor two"));
    given().accept("text/html").formParam("name", "floor-three").formParam("digest", digest)
        .formParam("author", "Ida Marsh").post("/manage/rename/shared/cautions/floor-two.md").then().statusCode(409)
        .body(containsString("nothing was changed"));
    assertEquals(CAUTION.formatted("down"), text("shared/cautions/floor-two.md"));
    assertEquals(TREE.formatted("Two", "floor two"), text("trees/manage-two.md"));
  }

  @Test
  void aNameThatIsTakenOrNoneIsRefused() {
    save("shared/cautions/floor-four.md", CAUTION.formatted("down"));
    page("/manage/shared/cautions/floor-four.md?name=gas").statusCode(409).body(containsString("is in the library"));
    page("/manage/shared/cautions/floor-four.md?name=Floor Four").statusCode(400)
        .body(containsString("is the name it has"));
    page("/manage/shared/cautions/floor-four.md?name=?!").statusCode(400).body(containsString("no letter"));
    page("/manage/shared/words.md?name=other").statusCode(400).body(containsString("the only name it can have"));
    page("/manage/trees/no-such.md").statusCode(404);
  }

  @Test
  void theErrorsThatARenamingWouldBringAreShownFirst() {
    page("/manage/shared/cautions/line-voltage.md?name=high-tension").statusCode(200)
        .body(containsString("The check would find these errors"));
  }

  @Test
  void whatIsRemovedIsListedAndComesBack() {
    save("trees/manage-three.md", TREE.formatted("Three", "gas"));
    given().redirects().follow(false).formParam("basedOn", number("trees/manage-three.md"))
        .formParam("author", "Ida Marsh").formParam("message", "No longer sold")
        .post("/manage/remove/trees/manage-three.md").then().statusCode(303);
    assertEquals("", text("trees/manage-three.md"));
    var before = number("trees/manage-three.md") - 1;
    page("/removed").body(allOf(containsString("/revision/trees/manage-three.md?number=" + before),
        containsString("No longer sold")));
    page("/revision/trees/manage-three.md?number=" + before)
        .body(allOf(containsString("Bring this revision back"), containsString("refer: a plumber")));
    page("/revision/trees/manage-three.md?number=" + (before + 1)).body(containsString("took the file out"));
    given().redirects().follow(false).formParam("number", before).formParam("basedOn", before + 1)
        .formParam("author", "Ida Marsh").post("/revision/trees/manage-three.md").then().statusCode(303);
    assertEquals(TREE.formatted("Three", "gas"), text("trees/manage-three.md"));
    page("/removed").body(not(containsString("manage-three")));
    page("/history/trees/manage-three.md").body(containsString("Brought back revision " + before));
  }

  @Test
  void anOldRevisionThatSomebodyWentOnFromIsNotBroughtBackUnseen() {
    save("trees/manage-four.md", TREE.formatted("Four", "gas"));
    save("trees/manage-four.md", TREE.formatted("Four again", "gas"));
    var based = number("trees/manage-four.md");
    save("trees/manage-four.md", TREE.formatted("Four once more", "gas"));
    given().accept("text/html").formParam("number", based - 1).formParam("basedOn", based)
        .formParam("author", "Ida Marsh").post("/revision/trees/manage-four.md").then().statusCode(409);
    assertTrue(text("trees/manage-four.md").contains("once more"));
    page("/revision/trees/manage-four.md?number=99").statusCode(404);
  }

  @Test
  void aCopyOpensInTheEditorUnderItsOwnTitle() {
    save("trees/manage-five.md", TREE.formatted("Five", "gas"));
    page("/new/copy?from=trees/manage-five.md&title=Five: the copy").statusCode(200)
        .body(allOf(containsString("trees/five-the-copy.md"), containsString("title: &quot;Five: the copy&quot;")));
    assertFalse(store.head(new DocumentPath("trees/five-the-copy.md")).isPresent());
    page("/new/copy?from=shared/words.md&title=Words").statusCode(400);
    page("/new/copy?from=trees/manage-five.md&title=Manage five").statusCode(409);
  }

  @Test
  void wordsAreChangedEverywhereAtOnce() {
    save("shared/cautions/floor-six.md", CAUTION.formatted("at zanzibarian tiles, zanzibarian"));
    save("trees/manage-six.md", TREE.formatted("Six zanzibarian", "floor six"));
    var preview = "/reword?words=zanzibarian&others=slate";
    page(preview).body(allOf(containsString("2 texts change"), containsString("trees/manage-six.md")));
    given().redirects().follow(false).formParam("words", "zanzibarian").formParam("others", "slate")
        .formParam("digest", digest(preview)).formParam("author", "Ida Marsh").post("/reword").then().statusCode(303);
    assertEquals(CAUTION.formatted("at slate tiles, slate"), text("shared/cautions/floor-six.md"));
    assertEquals(TREE.formatted("Six slate", "floor six"), text("trees/manage-six.md"));
    page(preview).body(containsString("No text has these words"));
    page("/reword?words=" + "x".repeat(201) + "&others=").statusCode(400);
  }

  @Test
  void aSystemsPageShowsWhereItsPartsAreUsed() {
    page("/manage/shared/systems/heat-pump.md").statusCode(200).body(allOf(containsString("reversing valve"),
        containsString("trees/heat-pump-warm-air-in-cooling.md, line")));
  }

  @Test
  void aSaveWithoutANameIsRefused() {
    save("trees/manage-seven.md", TREE.formatted("Seven", "gas"));
    given().accept("text/html").formParam("basedOn", number("trees/manage-seven.md")).formParam("author", " ")
        .post("/manage/remove/trees/manage-seven.md").then().statusCode(400)
        .body(containsString("the name of its author"));
    assertFalse(text("trees/manage-seven.md").isEmpty());
  }
}
