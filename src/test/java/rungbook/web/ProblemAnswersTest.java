package rungbook.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rungbook.web.http.Failures;

/** What is wrong with a request is said in one shape, wherever it goes wrong. */
@Tag("server")
@QuarkusTest
class ProblemAnswersTest {
  private static final String GIVEN = "{\"path\":\"trees/a.md\",\"text\":\"x\"}";

  @TestHTTPResource("/")
  URL address;

  @ParameterizedTest
  @CsvSource({"GET,/nowhere,404", "POST,/help,405", "PUT,/api/check,405", "GET,/api/nowhere,404",
      "DELETE,/rungbook.css,404"})
  void theFrameworksOwnRefusalsAreProblemsToo(String method, String path, int status) {
    given().when().request(method, path).then().statusCode(status).contentType("application/problem+json")
        .body("status", equalTo(status)).body("hint", not(equalTo("")));
  }

  @Test
  void aPersonGetsAPageAndAProgramGetsJson() {
    given().accept("text/html,application/xhtml+xml;q=0.9,*/*;q=0.8").get("/nowhere").then().statusCode(404)
        .contentType("text/html").body(containsString("What to do"));
    given().accept("application/json, text/html;q=0.5").get("/nowhere").then().statusCode(404)
        .contentType("application/problem+json");
    given().accept("text/html").get("/api/nowhere").then().statusCode(404).contentType("application/problem+json");
    given().accept("text/html").header("Host", "evil.example").get("/").then().statusCode(421).contentType("text/html")
        .body(containsString("What to do"));
  }

  @Test
  void aBodyOfAnotherMediaTypeSaysWhichIsTaken() {
    given().contentType("text/plain").body(GIVEN).when().post("/api/check").then().statusCode(415)
        .contentType("application/problem+json").body("hint", containsString("application/json"));
  }

  @Test
  void malformedJsonSaysWhere() {
    given().contentType("application/json").body("{\"path\":\n\"trees/a.md\",,}").when().post("/api/check").then()
        .statusCode(400)
        .contentType("application/problem+json").body("detail", containsString("line 2, column"));
    given().contentType("application/json").body("{\"path\":\"trees/a.md\",\"text\":[]}").when().post("/api/check")
        .then().statusCode(400)
        .body("detail", containsString("`text`"));
    given().contentType("application/json").body("null").when().post("/api/check").then().statusCode(400).body("detail",
        containsString("no body"));
    given().contentType("application/json").body("{}").when().post("/api/check").then().statusCode(400).body("detail",
        containsString("which document"));
    given().contentType("application/json").body("{\"basedOn\":\"1\",\"text\":\"x\",\"author\":\"a\"}").when()
        .put("/api/documents/trees/problem-answers.md").then().statusCode(400)
        .body("detail", containsString("`basedOn`"));
  }

  @Test
  void halfACharacterIsNotSavedAsAnother() {
    given().contentType("application/json").body("{\"basedOn\":0,\"text\":\"a\\ud800b\",\"author\":\"a\"}").when()
        .put("/api/documents/trees/problem-answers.md").then().statusCode(400)
        .body("detail", containsString("half of a character"));
    given().get("/api/documents/trees/problem-answers.md").then().statusCode(404);
  }

  @ParameterizedTest
  @ValueSource(strings = {"%zz", "%", "%E0%A4%A", "a%00b", "%ff"})
  void aDamagedCookieIsNoName(String value) {
    for (var path : List.of("/transfer", "/edit/trees/no-cooling-blower-runs.md", "/new/tree?title=Some+new+title",
        "/new/text?folder=shared/cautions/&title=New")) {
      given().urlEncodingEnabled(false).header("Cookie", "rungbook-author=" + value).accept("text/html").get(path)
          .then().statusCode(200);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"GET / HTTP/1.1\r\nHost: a b c\r\n\r\n", "GET / HTTP/1.1\r\nHost: 127.0.0.1:99999999\r\n\r\n",
      "GET / HTTP/1.1\r\n\r\n",
      "GET / HTTP/1.1\r\nHost: [::1\r\n\r\n", "GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nHost: localhost\r\n\r\n",
      "GET http://evil.example/ HTTP/1.1\r\nHost: evil.example\r\n\r\n"})
  void aHostThatCannotBeReadIsRefusedWithAReason(String request) throws IOException {
    var answer = RawHttp.send(address.getPort(), request.replace("\r\n\r\n", "\r\nConnection: close\r\n\r\n"));
    assertTrue(answer.startsWith("HTTP/1.1 4"), answer);
    assertTrue(answer.contains("application/problem+json") && answer.contains("\"hint\""), answer);
    assertTrue(answer.contains("X-Content-Type-Options: nosniff"), answer);
  }

  /** The framework refuses these before any code of the program runs, as docs/server.md says. */
  @ParameterizedTest
  @ValueSource(strings = {"GET /%zz HTTP/1.1\r\nHost: 127.0.0.1", "GET /?q=50% HTTP/1.1\r\nHost: 127.0.0.1",
      "GET /a|b HTTP/1.1\r\nHost: 127.0.0.1", "GET /a\u0001b HTTP/1.1\r\nHost: 127.0.0.1",
      "G\u0001T / HTTP/1.1\r\nHost: 127.0.0.1", "GET / HTTP/1.1\r\nHost: 127.0.\u00010.1",
      "GET / HTTP/1.1\r\nHost: a\u0000b", "GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nX y: 1",
      "POST /api/check HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: abc",
      "POST /api/check HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: 1\r\nContent-Length: 2"})
  void whatIsNoRequestIsRefusedWithAStatusAlone(String head) throws IOException {
    var answer = RawHttp.send(address.getPort(), head + "\r\nConnection: close\r\n\r\n");
    assertTrue(answer.matches("(?s)HTTP/1\\.[01] 400 Bad Request\r\n.*"), answer);
    assertTrue(answer.endsWith("\r\n\r\n"), "it has words now, and docs/server.md says it has none: " + answer);
    given().get("/help").then().statusCode(200);
  }

  @Test
  void aClientsFaultLeavesNoTraceInTheLog() throws IOException {
    var traces = new ArrayList<String>();
    var listener = new Handler() {
      @Override
      public void publish(LogRecord line) {
        if (line.getThrown() != null) {
          traces.add(line.getMessage() + ": " + line.getThrown());
        }
      }

      @Override
      public void flush() {}

      @Override
      public void close() {}
    };
    Logger.getLogger("").addHandler(listener);
    try {
      malformedJsonSaysWhere();
      aBodyOfAnotherMediaTypeSaysWhichIsTaken();
      aDamagedCookieIsNoName("%zz");
      RawHttp.send(address.getPort(), "GET / HTTP/1.1\r\nHost: a b c\r\nConnection: close\r\n\r\n");
      RawHttp.send(address.getPort(), "GET /%zz HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n");
    } finally {
      Logger.getLogger("").removeHandler(listener);
    }
    assertEquals(List.of(), traces);
  }

  @Test
  void thatNothingWasChangedIsSaidOnlyOfAReader() {
    assertEquals("Nothing was changed by this request", Failures.ownMistake(true).detail());
    assertFalse(Failures.ownMistake(false).detail().contains("Nothing"));
  }
}
