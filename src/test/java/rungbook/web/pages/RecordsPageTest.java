package rungbook.web.pages;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.web.record.RecordSamples;

@Tag("server")
@QuarkusTest
class RecordsPageTest {
  private static String withId(String record, String id) {
    return record.replaceFirst("\"id\":\"[0-9a-f]{16}\"", "\"id\":\"" + id + "\"")
        .replaceFirst("\"i\":\"[0-9a-f]{16}\"", "\"i\":\"" + id + "\"");
  }

  @Test
  void aFileIsTakenInAndItsPageShowsTheAnswers() {
    var record = withId(RecordSamples.FULL, "0000000000000b01");
    var page = given().accept("text/html").redirects().follow(false)
        .multiPart("file", "record.json", record.getBytes(StandardCharsets.UTF_8)).multiPart("text", "")
        .post("/records").then().statusCode(303).extract().header("Location");
    given().accept("text/html").get(page).then().statusCode(200).body(allOf(containsString("Hill farm, unit 2"),
        containsString("<strong>198.5 V</strong> (expected 207 to 264 V)"), containsString("Fault: outdoor supply low"),
        containsString("Left open, off or set"), containsString("electrical cover off"), containsString("Guard posted"),
        containsString("never handed out a pack with this digest"),
        containsString("Look at the packs before you use this record")));
    given().accept("text/html").get("/records").then().statusCode(200).body(containsString("Hill farm, unit 2"));
    given().accept("text/html").get("/records?tree=example").then().statusCode(200)
        .body(containsString("Hill farm, unit 2"));
  }

  @Test
  void aPastedTextIsTakenIn() {
    var text = "FIELD RECORD\n\n"
        + withId(RecordSamples.FULL, "0000000000000b02").replace("Hill farm", "<b>Vale farm</b>");
    given().accept("text/html").multiPart("text", text).post("/records").then().statusCode(200)
        .body(allOf(containsString("&lt;b&gt;Vale farm&lt;/b&gt;, unit 2"), not(containsString("<b>Vale"))));
    given().accept("text/html").multiPart("text", withId(RecordSamples.SHORT, "0000000000000b03")).post("/records")
        .then().statusCode(200).body(containsString("Read off QR pictures"));
  }

  @Test
  void whatIsNoRecordIsSaidOnAPage() {
    given().accept("text/html").multiPart("text", "hello").post("/records").then().statusCode(400)
        .body(containsString("there is no field record in this text"));
    given().accept("text/html").multiPart("file", "a.png", new byte[] {(byte) 0xff, (byte) 0xfe, 0}).post("/records")
        .then().statusCode(400).body(containsString("is no text"));
    given().accept("text/html").multiPart("text", "").post("/records").then().statusCode(400)
        .body(containsString("there is no text"));
  }

  @Test
  void aTreesPageLeadsToItsRecords() {
    given().accept("text/html").get("/tree/trees/no-cooling-blower-runs.md").then().statusCode(200)
        .body(containsString("href=\"/records?tree=no-cooling-blower-runs\""));
  }
}
