package rungbook.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.pack.page.PageForm;
import rungbook.web.record.PracticeSamples;
import rungbook.web.record.RecordSamples;

/** Results of practice come in by the door of field records. */
@Tag("server")
@QuarkusTest
class PracticeResultsTest {
  private static final String SYSTEM = "fan-coil-electric-heat";

  private static ValidatableResponse send(String results) {
    return given().contentType("application/json").body(results).post("/api/records").then();
  }

  private static String of(String learner) {
    return PracticeSamples.FULL.replace("Odalys Fernhøllow", learner);
  }

  private static String onThisPage(String results) {
    var page = given().get("/api/practice/" + SYSTEM).then().statusCode(200).extract().asByteArray();
    return results.replaceFirst("\"digest\":\"[0-9a-f]{64}\"",
        "\"digest\":\"" + PageForm.of(page).orElseThrow().stated() + "\"");
  }

  @Test
  void resultsOfThisLibrarysPageAreMatched() {
    var text = onThisPage(of("Learner one"));
    var number = send(text).statusCode(201).header("Location", containsString("/api/records/"))
        .body("kind", equalTo("practice")).body("job", equalTo("Learner one")).body("answers", equalTo(2))
        .body("at", equalTo(SYSTEM)).body("found", hasItem("1 of 2 found")).body("flagged", equalTo(false))
        .body("packs[0].says", equalTo("the practice page of this library")).extract().<Integer>path("id");
    given().get("/api/records/" + number).then().statusCode(200).body("received", equalTo(text));
  }

  @Test
  void thoseOfAnotherEditionAndOfNoSystemAreKeptAndFlagged() {
    send(of("Learner two").replaceFirst("\"digest\":\"....", "\"digest\":\"0000")).statusCode(201)
        .body("flagged", equalTo(true)).body("packs[0].says", containsString("of another edition"));
    send(of("Learner three").replace(SYSTEM, "../nowhere")).statusCode(201).body("flagged", equalTo(true))
        .body("packs[0].says", containsString("no practice page of this system"));
  }

  @Test
  void theSameAgainAddsNothingAndMoreRoundsReplaceFewer() {
    var all = of("Learner four");
    var fewer = all.substring(0, all.indexOf(",{\"level\":1,")) + "]}";
    send(fewer).statusCode(201);
    send(all).statusCode(201);
    send(all).statusCode(200);
    send(fewer).statusCode(200);
    given().get("/api/records").then().statusCode(200)
        .body("findAll { it.job == 'Learner four' }", hasSize(1))
        .body("find { it.job == 'Learner four' }.answers", equalTo(2));
    given().get("/api/records?tree=" + SYSTEM).then().body("job", not(hasItem("Learner four")));
  }

  @Test
  void picturesAreTakenInAsText() {
    var text = PracticeSamples.SHORT.replace("Odalys Fernh\\u00f8llow", "Learner five");
    var cut = text.indexOf(" secondary") + 1;
    var pictures = "RUNGBOOK 2/2 practice:" + text.substring(cut) + "\nRUNGBOOK 1/2 practice:" + text.substring(0, cut);
    given().contentType("text/plain; charset=utf-8").body(pictures).post("/api/records").then().statusCode(201)
        .body("job", equalTo("Learner five")).body("answers", equalTo(2));
    given().accept("text/html").multiPart("text", pictures).post("/records").then().statusCode(200)
        .body(allOf(containsString("Learner five"), containsString("Hidden: <strong>transformer secondary open"),
            containsString("Read off QR pictures")));
  }

  @Test
  void aFileIsTakenInAndItsPageShowsTheRounds() {
    var text = "PRACTICE, x\n\n"
        + of("<b>Learner six</b>").replaceFirst("\"digest\":\"....", "\"digest\":\"0000") + "\n";
    var page = given().accept("text/html").redirects().follow(false)
        .multiPart("file", "practice.txt", text.getBytes(StandardCharsets.UTF_8)).multiPart("text", "")
        .post("/records").then().statusCode(303).extract().header("Location");
    given().accept("text/html").get(page).then().statusCode(200).body(allOf(
        containsString("&lt;b&gt;Learner six&lt;/b&gt;"), not(containsString("<b>Learner")),
        containsString("level 9, exercise <code>9-7-2-114</code>"),
        containsString("<strong>Not right</strong> · level 1"),
        containsString("Hidden: <strong>breaker tripped</strong>"),
        containsString("Named: transformer secondary open"),
        containsString("2.5 min of work, 2 min of walking"),
        containsString("Panel opened with the power on: access panel, transformer L1 is live"),
        containsString("AC volts, R to C: 0.0 V"), containsString("Not this library’s practice page")));
    given().accept("text/html").get("/records").then().statusCode(200)
        .body(allOf(containsString("<strong>Practice</strong>, 2 rounds"), containsString("Learner six")));
  }

  @Test
  void whatIsWrongIsRefusedWithItsPlaceAndFieldRecordsStillComeIn() {
    send(of("Learner seven").replace("\"level\":9", "\"level\":19")).statusCode(400)
        .contentType("application/problem+json")
        .body("detail", equalTo("`rounds[0].level` is no whole number from 1 to 10"))
        .body("hint", containsString("docs/practice.md has their form"));
    given().accept("text/html").multiPart("text", of("Learner seven").replace("\"right\":true", "\"right\":1"))
        .post("/records").then().statusCode(400).body(containsString("is neither true nor false"));
    send(RecordSamples.FULL.replaceFirst("\"id\":\"[0-9a-f]{16}\"", "\"id\":\"0000000000000c01\"")).statusCode(201)
        .body("kind", equalTo("record"));
  }

  @Test
  void theSchemaIsPublished() {
    var schema = given().get("/schema/practice-results.json").then().statusCode(200).extract().jsonPath();
    assertEquals("urn:rungbook:practice-results:1", schema.getString("'$id'"));
    assertTrue(schema.getList("required").contains("rounds"));
  }
}
