package rungbook.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.pack.Verify;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Save;
import rungbook.web.record.RecordSamples;
import rungbook.web.service.CompiledLibrary;

@Tag("server")
@QuarkusTest
class RecordsApiTest {
  private static final AtomicInteger NEXT = new AtomicInteger(0x1000);
  private static final String TREE = "no-cooling-blower-runs";

  @Inject
  Store store;

  @Inject
  CompiledLibrary library;

  private static ValidatableResponse send(String record) {
    return given().contentType("application/json").body(record).post("/api/records").then();
  }

  private static String withId(String record, String id) {
    return record.replaceFirst("\"id\":\"[0-9a-f]{16}\"", "\"id\":\"" + id + "\"")
        .replaceFirst("\"i\":\"[0-9a-f]{16}\"", "\"i\":\"" + id + "\"");
  }

  private static String id() {
    return "00000000000a" + Integer.toHexString(NEXT.incrementAndGet());
  }

  private static String digest(String path) {
    var pack = given().get("/api/packs/" + path).then().statusCode(200).extract().asByteArray();
    return ((Verify.Verdict.Intact) Verify.of(pack)).digest();
  }

  /** The sample, as if it had been written by the pack with this digest. */
  private static String following(String digest, String id) {
    var first = Pattern.compile("\"digest\":\"[0-9a-f]{64}\"").matcher(withId(RecordSamples.FULL, id));
    return first.replaceAll("\"digest\":\"" + digest + "\"");
  }

  @Test
  void aRecordOfAPackThatWasHandedOutIsMatchedToItsRevision() {
    var revision = store.head(new DocumentPath("trees/" + TREE + ".md")).orElseThrow().number();
    send(following(digest("trees/" + TREE + ".md"), id())).statusCode(201)
        .header("Location", containsString("/api/records/"))
        .body("flagged", equalTo(false)).body("packs[0].path", equalTo("trees/" + TREE + ".md"))
        .body("packs[0].revision", equalTo(revision)).body("packs[0].says", equalTo("the newest revision"))
        .body("closed", equalTo(true)).body("left", hasItem("electrical cover off"));
  }

  @Test
  void aRecordOfAnUnknownPackIsKeptAndFlagged() {
    var id = id();
    var number = send(withId(RecordSamples.FULL, id)).statusCode(201).body("flagged", equalTo(true))
        .body("packs[0].says", containsString("never handed out")).extract().<Integer>path("id");
    given().get("/api/records/" + number).then().statusCode(200).body("entry.recordId", equalTo(id))
        .body("received", equalTo(withId(RecordSamples.FULL, id)));
  }

  @Test
  void aRecordOfAnOlderRevisionSaysSoAndOfAWithdrawnTreeIsFlagged() {
    var path = new DocumentPath("trees/records-withdrawn.md");
    var text = store.head(new DocumentPath("trees/" + TREE + ".md")).orElseThrow().text();
    save(path, 0, text);
    var digest = digest(path.text());
    save(path, 1, text.replace("complaint: ", "complaint: Again, "));
    library.newest();
    var number = send(following(digest, id())).statusCode(201).body("packs[0].revision", equalTo(1))
        .extract().<Integer>path("id");
    given().get("/api/records/" + number).then()
        .body("entry.packs[0].says", equalTo("older: the library has revision 2"))
        .body("entry.flagged", equalTo(false));
    given().delete("/api/documents/" + path + "?basedOn=2&author=Odalys%20Fernhollow").then().statusCode(200);
    library.newest();
    given().get("/api/records/" + number).then()
        .body("entry.packs[0].says", equalTo("withdrawn: its tree is no longer in the library"))
        .body("entry.flagged", equalTo(true));
  }

  private void save(DocumentPath path, int basedOn, String text) {
    store.save(Save.written(path, basedOn, text.getBytes(StandardCharsets.UTF_8), "Odalys Fernhollow", "x"));
  }

  @Test
  void theSameTextAgainChangesNothingAndTheNewestStateIsListed() {
    var id = id();
    var first = withId(RecordSamples.FULL, id);
    send(first).statusCode(201);
    send(first).statusCode(200);
    send(first.replaceFirst("\"saves\":\\d+", "\"saves\":999").replace("Hill farm, unit 2", "Hill farm, unit 3"))
        .statusCode(201);
    given().contentType("text/plain").body(withId(RecordSamples.SHORT, id)).post("/api/records").then()
        .statusCode(201);
    given().get("/api/records").then().statusCode(200)
        .body("findAll { it.recordId == '" + id + "' }", hasSize(1))
        .body("find { it.recordId == '" + id + "' }.job", equalTo("Hill farm, unit 3"));
  }

  @Test
  void aTreesRecordsAreListed() {
    var id = id();
    send(withId(RecordSamples.FULL, id)).statusCode(201);
    given().get("/api/records?tree=" + TREE).then().body("recordId", hasItem(id));
    given().get("/api/records?tree=no-such-tree").then().body("recordId", not(hasItem(id)));
  }

  @Test
  void aMessageAndPicturesAreTakenInAsText() {
    var half = RecordSamples.SHORT.length() / 2;
    var id = id();
    var text = withId(RecordSamples.SHORT, id);
    var pictures = "RUNGBOOK 2/2 0000:" + text.substring(half) + "\nRUNGBOOK 1/2 0000:" + text.substring(0, half);
    given().contentType("text/plain; charset=utf-8").body(pictures).post("/api/records").then().statusCode(201)
        .body("recordId", equalTo(id)).body("answers", equalTo(4));
    given().contentType("text/plain; charset=utf-8").body("RUNGBOOK 2/2 0000:x").post("/api/records").then()
        .statusCode(400).contentType("application/problem+json")
        .body("detail", equalTo("of 2 QR pictures these are missing: 1"));
  }

  @Test
  void whatIsNoRecordIsRefusedWithItsPlace() {
    send(RecordSamples.FULL.replaceFirst("\"kind\":\"check\"", "\"kind\":\"chec\"")).statusCode(400)
        .contentType("application/problem+json")
        .body("detail", equalTo("`steps[1].kind` is none of check, task, finding, end"))
        .body("hint", endsWith("field-record.md has its form"));
    send("{\"format\":\"" + "x".repeat(1 << 20) + "\"}").statusCode(413).contentType("application/problem+json");
    given().get("/api/records/999999999").then().statusCode(404).contentType("application/problem+json");
  }

  @Test
  void theSchemaIsPublished() {
    var schema = given().get("/schema/field-record.json").then().statusCode(200).extract().jsonPath();
    assertEquals("urn:rungbook:field-record:1", schema.getString("'$id'"));
    assertTrue(schema.getList("required").contains("steps"));
  }
}
