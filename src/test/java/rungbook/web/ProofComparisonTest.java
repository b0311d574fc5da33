package rungbook.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A tree is proved against its earlier revisions. */
@Tag("server")
@QuarkusTest
class ProofComparisonTest {
  private static final String PATH = "trees/compared-with-before.md";

  private static void save(int basedOn, String text) {
    given().contentType("application/json")
        .body(Map.of("basedOn", basedOn, "text", text, "author", "Tobin", "message", "Changed"))
        .put("/api/documents/" + PATH).then().statusCode(200);
  }

  private static String page(String address) {
    return given().accept("text/html").get(address).then().statusCode(200).extract().asString();
  }

  /** The first revision takes one fault for another; the second one is the starter tree. */
  @Test
  void thePageTheHistoryAndProgramsSayWhatEndsElsewhere() throws IOException {
    var now = Files.readString(Path.of("trees/outdoor-unit-does-not-stop.md"));
    save(0, now.replace("fault: contactor welded closed", "fault: Y and G crossed at furnace"));
    given().get("/api/documents/" + PATH).then().body("entry.revision", equalTo(1));
    save(1, now);
    var shown = page("/proof/" + PATH);
    // the newest save may still be checked, and then the earlier text proved
    for (var tries = 0; tries < 60 && !shown.contains("now at"); tries++) {
      shown = page("/proof/" + PATH);
    }
    assertThat(shown, allOf(containsString("Compared with revision 1"),
        containsString("contactor welded closed: ended at")));
    assertThat(page("/history/" + PATH),
        containsString("href=\"/proof/" + PATH + "?from=1\""));
    given().get("/api/proof/" + PATH + "?from=1").then().statusCode(200)
        .body("proofs[0].against.name", equalTo("revision 1"))
        .body("proofs[0].against.changes.case", hasItem("contactor welded closed"));
    given().get("/api/proof/" + PATH).then().statusCode(200).body(not(containsString("against")));
    given().get("/api/proof/" + PATH + "?from=9").then().statusCode(404);
  }
}
