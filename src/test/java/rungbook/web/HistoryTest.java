package rungbook.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Outcome;
import rungbook.store.document.Refused;
import rungbook.store.document.Save;

@Tag("server")
@QuarkusTest
class HistoryTest {
  @Inject
  Store store;

  @Test
  void aLongHistoryIsShownInPartsAndItsChainIsCheckedWhole() {
    var path = new DocumentPath("trees/history-long.md");
    store.saveAll(IntStream.range(0, 120).mapToObj(i -> save(path, i, "text " + i)).toList());
    assertEquals(Optional.empty(), store.firstBroken(path));
    given().get("/api/history/" + path).then().body("revisions", hasSize(50)).body("revisions[0].revision", equalTo(71))
        .body("firstBroken", nullValue());
    given().get("/api/history/" + path + "?before=21").then().body("revisions", hasSize(20))
        .body("revisions[0].revision", equalTo(1));
    given().get("/api/history/" + path + "?before=1").then().statusCode(404).body("detail",
        containsString("no revision before 1"));
    given().accept("text/html").get("/history/" + path).then()
        .body(allOf(containsString("?before=71"), containsString("chain of hashes is intact")));
    given().accept("text/html").get("/history/" + path + "?before=21&from=1&to=2").then()
        .body(allOf(not(containsString("Older revisions")), containsString("From revision 1 to 2")));
  }

  @Test
  void aDraftIsDiscardedOnlyFromItsOwnDocument() {
    var id = lost("trees/history-mine.md", "mine".getBytes(StandardCharsets.UTF_8));
    lost("trees/history-other.md", "other".getBytes(StandardCharsets.UTF_8));
    given().redirects().follow(false).formParam("draft", id).post("/history/discard-draft/trees/history-other.md")
        .then()
        .statusCode(404)
        .body("hint", not(equalTo("")));
    given().get("/api/drafts/trees/history-mine.md").then().body("id", hasItem((int) id));
    given().redirects().follow(false).formParam("draft", id).post("/history/discard-draft/trees/history-mine.md").then()
        .statusCode(303);
    given().get("/api/drafts/trees/history-mine.md").then().body("", hasSize(0));
    given().redirects().follow(false).formParam("draft", id).post("/history/discard-draft/trees/history-mine.md").then()
        .statusCode(404);
  }

  @Test
  void theSameTextThatLosesAgainIsOneDraftAndTooManyAreRefused() {
    var path = new DocumentPath("trees/history-drafts.md");
    store.save(save(path, 0, "one"));
    store.save(save(path, 1, "two"));
    var first = (Outcome.Conflict) store.save(save(path, 1, "mine"));
    assertEquals(first.draft().id(), ((Outcome.Conflict) store.save(save(path, 1, "mine"))).draft().id());
    IntStream.range(1, 100).forEach(i -> store.save(save(path, 1, "mine " + i)));
    assertEquals(100, store.drafts(path).size());
    var full = assertThrows(Refused.class, () -> store.save(save(path, 1, "one more")));
    assertEquals("keep your text, discard drafts on the document's history page, then save on top of revision 2",
        full.hint());
    given().accept("text/html").get("/history/" + path).then().statusCode(200)
        .body(containsString("90 older ones are kept too"));
  }

  @Test
  void aPictureThatLostTheRaceIsGotBackByteForByte() {
    var mine = picture(3);
    var path = "trees/pictures/history.png";
    var id = lost(path, mine);
    assertArrayEquals(mine,
        given().get("/api/files/" + path + "?draft=" + id).then().statusCode(200).contentType("image/png")
            .header("Content-Security-Policy", containsString("sandbox")).extract().asByteArray());
    assertArrayEquals(picture(1),
        given().get("/api/files/" + path + "?revision=1").then().statusCode(200).extract().asByteArray());
    assertArrayEquals(picture(2), given().get("/api/files/" + path).then().statusCode(200).extract().asByteArray());
    given().get("/api/files/" + path + "?revision=9").then().statusCode(404);
    given().get("/api/files/trees/pictures/board.png?draft=" + id).then().statusCode(404);
    given().get("/api/drafts/" + path).then().body("text", equalTo(java.util.Collections.singletonList(null)))
        .body("[0].href", equalTo("/api/files/" + path + "?draft=" + id));
    given().accept("text/html").get("/history/" + path).then()
        .body(containsString("href=\"/api/files/" + path + "?draft=" + id + "\" download"));
    given().accept("text/html").get("/edit/" + path + "?draft=" + id).then().statusCode(400)
        .body(containsString("download the draft"));
  }

  private long lost(String path, byte[] mine) {
    var at = new DocumentPath(path);
    var picture = at.isPicture();
    store.save(Save.written(at, 0, picture ? picture(1) : new byte[] {'1'}, "Tobin", ""));
    store.save(Save.written(at, 1, picture ? picture(2) : new byte[] {'2'}, "Tobin", ""));
    return ((Outcome.Conflict) store.save(Save.written(at, 1, mine, "Odalys", ""))).draft().id();
  }

  private static byte[] picture(int last) {
    return new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R', (byte) 0xff,
        (byte) last};
  }

  private static Save save(DocumentPath path, int basedOn, String text) {
    return Save.written(path, basedOn, text.getBytes(StandardCharsets.UTF_8), "Tobin", "");
  }
}
