package rungbook.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungbook.pack.Verify;
import rungbook.pack.signature.PublicSigningKey;
import rungbook.pack.signature.UnusableKeyException;

/** All trees in one file, from the server. */
@Tag("server")
@QuarkusTest
class TogetherApiTest {

  private static byte[] bytes(String address) {
    return given().get(address).then().statusCode(200).extract().asByteArray();
  }

  @Test
  void theSameLibraryIsTheSameBook() {
    byte[] book = given().get("/api/book").then().statusCode(200).contentType("application/epub+zip")
        .header("Content-Disposition", endsWith("UTF-8''trees.epub")).extract().asByteArray();
    assertEquals("mimetypeapplication/epub+zip", new String(book, 30, 28, StandardCharsets.US_ASCII));
    assertArrayEquals(book, bytes("/api/book"));
  }

  @Test
  void theSameLibraryIsTheSamePage() {
    byte[] page = given().get("/api/library-file").then().statusCode(200).contentType("text/html; charset=UTF-8")
        .header("Content-Disposition", endsWith("UTF-8''trees.html")).extract().asByteArray();
    assertTrue(Verify.of(page) instanceof Verify.Verdict.Intact intact && intact.file().equals("all-trees.html"));
    assertArrayEquals(page, bytes("/api/library-file"));
  }

  @ParameterizedTest
  @CsvSource({"/api/book, trees.epub", "/api/library-file, trees.html"})
  void bothAreSignedWithTheCompanysKey(String address, String file) throws UnusableKeyException {
    given().get(address + "?signature=true").then().statusCode(200)
        .header("Content-Disposition", endsWith("UTF-8''" + file + ".sig"));
    var key = PublicSigningKey.of(given().get("/api/packs/public-key").then().statusCode(200).extract().asString());
    assertTrue(key.verifies(bytes(address), bytes(address + "?signature=true")));
  }

  @Test
  void thePageOfExportsOffersBoth() {
    given().accept("text/html").get("/transfer").then().statusCode(200)
        .body(containsString("href=\"/api/book\" download"), containsString("href=\"/api/library-file\" download"));
  }
}
