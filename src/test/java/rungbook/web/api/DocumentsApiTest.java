package rungbook.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("server")
@QuarkusTest
class DocumentsApiTest {
  @Test
  void aTextIsSavedReadListedAndTakenOut() {
    save("trees/api-life.md", 0, "one").statusCode(200).body("revision", equalTo(1)).body("author", equalTo("Tobin"));
    given().get("/api/documents/trees/api-life.md").then().statusCode(200).body("text", equalTo("one"));
    given().get("/api/documents?under=trees/api-li").then().body("path",
        equalTo(java.util.List.of("trees/api-life.md")));
    given().delete("/api/documents/trees/api-life.md?basedOn=1&author=Tobin").then().statusCode(200).body("removed",
        equalTo(true));
    given().get("/api/documents/trees/api-life.md").then().statusCode(404).contentType("application/problem+json");
    given().get("/api/documents/trees/api-life.md?revision=1").then().statusCode(200).body("text", equalTo("one"));
  }

  @Test
  void aLostRaceAnswersWithBothTextsAndKeepsTheLosers() {
    save("trees/api-race.md", 0, "one");
    save("trees/api-race.md", 1, "theirs");
    var id = save("trees/api-race.md", 1, "mine").statusCode(409).contentType("application/problem+json")
        .body("current.text", equalTo("theirs")).body("draft.text", equalTo("mine"))
        .body("hint", containsString("revision 2"))
        .extract().jsonPath().getLong("draft.id");
    given().get("/api/drafts/trees/api-race.md").then().body("text", equalTo(java.util.List.of("mine")));
    given().delete("/api/drafts/" + id).then().statusCode(204);
    given().get("/api/drafts/trees/api-race.md").then().body("", hasSize(0));
  }

  @Test
  void historyTellsEveryRevisionAndThatTheChainHolds() {
    save("trees/api-history.md", 0, "one\ntwo\n");
    save("trees/api-history.md", 1, "one\n2\n");
    given().get("/api/history/trees/api-history.md").then().body("revisions.revision", equalTo(java.util.List.of(1, 2)))
        .body("firstBroken", nullValue());
    given().get("/api/difference/trees/api-history.md?from=1&to=2").then()
        .body("find { it.kind == 'TAKEN_OUT' }.parts[0].text", equalTo("two"))
        .body("find { it.kind == 'ADDED' }.parts[0].text", equalTo("2"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"../etc/passwd.md", "trees/..%2F..%2Fx.md", "trees/x.exe", "other/x.md", "trees/.x.md",
      "%2Ftrees/x.md"})
  void aPathOutsideTheLibraryIsRefusedWithAHint(String path) {
    given().urlEncodingEnabled(false).contentType("application/json")
        .body(Map.of("basedOn", 0, "text", "x", "author", "a"))
        .when().put("/api/documents/" + path).then().contentType("application/problem+json")
        .statusCode(path.startsWith("..") ? 404 : 400) // a step up that is not encoded never reaches the API
        .body("detail", containsString(path.substring(path.length() - 2))).body("hint", not(equalTo("")));
  }

  @Test
  void whatIsMissingOrWrongInASaveIsSaid() {
    given().contentType("application/json").body(Map.of("basedOn", 0, "text", "x", "author", " ")).when()
        .put("/api/documents/trees/api-bad.md").then().statusCode(400).body("detail", containsString("author"))
        .body("hint", containsString("who"));
    given().contentType("application/json").body(Map.of("basedOn", 0, "author", "a")).when()
        .put("/api/documents/trees/api-bad.md").then().statusCode(400).body("detail", containsString("no text"));
    given().contentType("application/json").body("{\"basedOn\":").when()
        .put("/api/documents/trees/api-bad.md").then().statusCode(400);
    save("trees/api-bad.md", 7, "x").statusCode(400).body("detail", containsString("no revision 7"));
    save("trees/api-bad.md", 0, "x".repeat((4 << 20) + 1)).statusCode(413).body("hint", containsString("split"));
  }

  @Test
  void aPictureIsServedSoThatItsOwnScriptCannotRun() {
    var svg = "<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>";
    given().contentType("image/svg+xml").body(svg).when()
        .put("/api/files/trees/pictures/api.svg?basedOn=0&author=Tobin").then().statusCode(200);
    given().get("/api/files/trees/pictures/api.svg").then().statusCode(200).contentType("image/svg+xml")
        .header("Content-Security-Policy", containsString("sandbox; default-src 'none'"));
    given().contentType("image/png").body(new byte[(1 << 20) + 1]).when()
        .put("/api/files/trees/pictures/big.png?basedOn=0&author=Tobin")
        .then().statusCode(413);
    given().contentType("image/png").body(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'}).when()
        .put("/api/files/trees/pictures/cut-off.png?basedOn=0&author=Tobin").then().statusCode(400)
        .body("detail", containsString("is no PNG picture"));
  }

  @Test
  void aTextIsNotSavedUnderAPicturesName() {
    save("trees/pictures/api-text.png", 0, "<script>").statusCode(400).body("detail",
        containsString("the name of a picture"));
    given().get("/api/files/trees/pictures/api-text.png").then().statusCode(404);
  }

  @Test
  void aPictureThatLostARaceComesBackByteForByte() {
    var first = "GIF89a\u0001".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
    var second = "GIF89a\u00ff\u00fe".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
    var at = "/api/files/trees/pictures/api-race.gif";
    given().contentType("image/gif").body(first).put(at + "?basedOn=0&author=Tobin").then().statusCode(200);
    var id = given().contentType("image/gif").body(second).put(at + "?basedOn=0&author=Tobin").then().statusCode(409)
        .body("draft.text", nullValue()).extract().jsonPath().getLong("draft.id");
    org.junit.jupiter.api.Assertions.assertArrayEquals(second, given().get(at + "?draft=" + id).asByteArray());
    org.junit.jupiter.api.Assertions.assertArrayEquals(first, given().get(at + "?revision=1").asByteArray());
    given().get("/history/trees/pictures/api-race.gif").then().statusCode(200)
        .body(containsString(at + "?draft=" + id));
  }

  @Test
  void aStaleOrPointlessRemovalIsRefused() {
    given().delete("/api/documents/trees/api-never.md?basedOn=0&author=Tobin").then().statusCode(404);
    save("trees/api-stale.md", 0, "one");
    save("trees/api-stale.md", 1, "two");
    given().delete("/api/documents/trees/api-stale.md?basedOn=1&author=Tobin").then().statusCode(409).body("hint",
        containsString("revision 2"));
    given().get("/api/drafts/trees/api-stale.md").then().body("", hasSize(0));
  }

  private static ValidatableResponse save(String path, int basedOn, String text) {
    return given().contentType("application/json")
        .body(Map.of("basedOn", basedOn, "text", text, "author", "Tobin", "message", "why"))
        .when().put("/api/documents/" + path).then();
  }
}
