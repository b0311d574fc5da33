package rungbook.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("server")
@QuarkusTest
class ReadingApiTest {
  private static final String FURNACE = "?system=split-cooling-gas-furnace";
  private static final String CONTACTOR = FURNACE + "&at=condenser&leads=Y,C";

  /** 24 V from a transformer, less what cable and load take (the system's text). */
  @Test
  void aReadingHasItsEndsAndWhatRuns() {
    get(CONTACTOR + "&set=thermostat cooling").statusCode(200).body("leads[0]", equalTo("Y at condenser"))
        .body("set", hasItem("thermostat cooling")).body("reading.unit", equalTo("V"))
        .body("reading.usual", allOf(greaterThan(22f), lessThan(28f))).body("reading.stray", equalTo(false))
        .body("on", hasKey("contactor"));
  }

  @Test
  void withoutLeadsItSaysWhatRuns() {
    get(FURNACE + "&set=thermostat cooling&set=door switch bypassed").statusCode(200)
        .body("on", hasKey("contactor")).body("reading.size()", equalTo(0));
  }

  @Test
  void aWrongNameIsToldWithTheNearest() {
    get(FURNACE + "&at=condensor").statusCode(400).contentType(startsWith("application/problem+json"))
        .body("field", equalTo("at")).body("nearest", equalTo("condenser"))
        .body("hint", containsString("condenser"));
  }

  @Test
  void everyWrongNameIsInTheList() {
    get(FURNACE + "&at=condensor&fault=no such&set=thermostat coolin").statusCode(400)
        .body("problems.field", allOf(hasItem("at"), hasItem("fault"), hasItem("set")));
  }

  @Test
  void aSystemIsNeeded() {
    get("").statusCode(400).body("hint", containsString("`system`"));
  }

  private static ValidatableResponse get(String query) {
    return given().urlEncodingEnabled(false).when().get("/api/reading" + query.replace(" ", "%20")).then();
  }
}
