package rungbook.web.pages;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.pack.signature.PublicSigningKey;
import rungbook.pack.signature.UnusableKeyException;

@Tag("server")
@QuarkusTest
class VerifyPageTest {
  private static final String PACK = "/api/packs/trees/no-cooling-blower-runs.md";

  private static byte[] bytes(String address) {
    return given().get(address).then().statusCode(200).extract().asByteArray();
  }

  @Test
  void aPackWithTheServersSignatureIsFoundToBeSigned() {
    given().accept("text/html").multiPart("pack", "a.html", bytes(PACK))
        .multiPart("signature", "a.html.sig", bytes(PACK + "?signature=true"))
        .when().post("/verify").then().statusCode(200).body(allOf(containsString("Intact"),
            containsString("Signed by this server"), containsString("It is the newest pack of this library")));
  }

  @Test
  void aFileThatIsNoPackIsSaidToBeNone() {
    given().accept("text/html").multiPart("pack", "<b>.html", new byte[] {1}).when().post("/verify").then()
        .statusCode(200).body(allOf(containsString("Not a pack"), containsString("&lt;b&gt;.html")));
  }

  @Test
  void withoutAFileItSaysWhatToChoose() {
    given().accept("text/html").multiPart("signature", "a.sig", new byte[] {1}).when().post("/verify").then()
        .statusCode(400).body(containsString("no pack was chosen"));
  }

  @Test
  void theSignatureHasTheNameThatTheShellLooksFor() throws UnusableKeyException {
    given().get(PACK + "?signature=true").then().statusCode(200)
        .header("Content-Disposition", endsWith("UTF-8''no-cooling-blower-runs.html.sig"));
    var key = PublicSigningKey.of(given().get("/api/packs/public-key").then().statusCode(200).extract().asString());
    assertTrue(key.verifies(bytes(PACK), bytes(PACK + "?signature=true")));
  }

  @Test
  void theZipHasASignatureBesideEachPage() throws IOException {
    var names = new ArrayList<String>();
    try (var zip = new ZipInputStream(new ByteArrayInputStream(bytes("/api/packs")))) {
      for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        names.add(entry.getName());
      }
    }
    assertTrue(names.contains("index.html.sig") && names.contains("no-cooling-blower-runs.html.sig"), names.toString());
  }
}
