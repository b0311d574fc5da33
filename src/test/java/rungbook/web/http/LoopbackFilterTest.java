package rungbook.web.http;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("server")
@QuarkusTest
class LoopbackFilterTest {
  @TestHTTPResource
  URL address;

  @ParameterizedTest
  @ValueSource(strings = {"evil.example", "evil.example:8181", "127.0.0.1.evil.example", "192.168.1.4", ""})
  void aForeignHostIsRefused(String host) {
    given().header("Host", host).when().get("/").then().statusCode(421).body("hint", containsString("127.0.0.1"));
    given().header("Host", host).when().get("/rungbook.css").then().statusCode(421);
  }

  @Test
  void thisMachinesNamesAreAnswered() {
    given().header("Host", "localhost:" + address.getPort()).when().get("/").then().statusCode(200);
    given().header("Host", "LOCALHOST:" + address.getPort()).when().get("/").then().statusCode(200);
    given().header("Host", "localhost.").when().get("/").then().statusCode(200);
    given().header("Host", "[::1]:" + address.getPort()).when().get("/").then().statusCode(200);
  }

  @Test
  void anotherSitesPageCannotWrite() {
    var text = "{\"basedOn\":0,\"text\":\"x\",\"author\":\"a\",\"message\":\"\"}";
    given().header("Origin", "http://evil.example").contentType("application/json").body(text)
        .when().put("/api/documents/trees/guard.md").then().statusCode(403);
    given().header("Origin", "null").contentType("application/json").body(text)
        .when().put("/api/documents/trees/guard.md").then().statusCode(403);
    given().header("Sec-Fetch-Site", "cross-site").when().delete("/api/documents/trees/guard.md").then()
        .statusCode(403);
    given().header("Sec-Fetch-Site", "same-site").multiPart("author", "a").when().post("/transfer").then()
        .statusCode(403);
    given().when().get("/api/documents/trees/guard.md").then().statusCode(404);
  }

  @Test
  void ownPagesAndProgramsCanWrite() {
    var text = "{\"path\":\"trees/guard.md\",\"text\":\"x\"}";
    given().header("Origin", "http://" + address.getAuthority()).header("Sec-Fetch-Site", "same-origin")
        .contentType("application/json").body(text).when().post("/api/check").then().statusCode(200);
    given().contentType("application/json").body(text).when().post("/api/check").then().statusCode(200);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/rungbook.css", "/api/documents", "/nowhere", "/edit/shared/cautions/gas.md"})
  void everyAnswerForbidsInlineScriptAndFraming(String path) {
    given().when().get(path).then()
        .header("Content-Security-Policy", containsString("script-src 'self';"))
        .header("Content-Security-Policy", containsString("frame-ancestors 'none'"))
        .header("Content-Security-Policy", not(containsString("unsafe-inline")))
        .header("X-Content-Type-Options", equalTo("nosniff"));
  }
}
