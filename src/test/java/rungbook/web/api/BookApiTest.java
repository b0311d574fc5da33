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
import rungbook.pack.signature.PublicSigningKey;
import rungbook.pack.signature.UnusableKeyException;

/** The library as a book, from the server. */
@Tag("server")
@QuarkusTest
class BookApiTest {

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
  void theBookIsSignedWithTheCompanysKey() throws UnusableKeyException {
    given().get("/api/book?signature=true").then().statusCode(200)
        .header("Content-Disposition", endsWith("UTF-8''trees.epub.sig"));
    var key = PublicSigningKey.of(given().get("/api/packs/public-key").then().statusCode(200).extract().asString());
    assertTrue(key.verifies(bytes("/api/book"), bytes("/api/book?signature=true")));
  }

  @Test
  void thePageOfExportsOffersIt() {
    given().accept("text/html").get("/transfer").then().statusCode(200)
        .body(containsString("href=\"/api/book\" download"));
  }
}
