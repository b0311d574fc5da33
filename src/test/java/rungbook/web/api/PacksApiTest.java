package rungbook.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.pack.Verify;
import rungbook.web.service.CompiledLibrary;

@Tag("server")
@QuarkusTest
class PacksApiTest {
  @Inject
  CompiledLibrary library;

  @Test
  void aTreesPackVerifiesAndHasTheNameThatOtherPacksLinkTo() {
    var pack = given().get("/api/packs/trees/no-cooling-blower-runs.md").then().statusCode(200)
        .header("Content-Disposition", endsWith("UTF-8''no-cooling-blower-runs.html")).extract().asByteArray();
    assertInstanceOf(Verify.Verdict.Intact.class, Verify.of(pack));
  }

  @Test
  void aPackMayCarryItsDigestInItsName() {
    var plain = given().get("/api/packs/trees/no-cooling-blower-runs.md").then().extract().asByteArray();
    var named = given().get("/api/packs/trees/no-cooling-blower-runs.md?digest=true").then().statusCode(200)
        .header("Content-Disposition",
            org.hamcrest.Matchers.matchesRegex(".*''no-cooling-blower-runs-[0-9a-f]{24}\\.html"))
        .extract().asByteArray();
    assertArrayEquals(plain, named);
  }

  @Test
  void theSameLibraryGivesTheSameZip() throws IOException {
    var zip = given().get("/api/packs").then().statusCode(200).extract().asByteArray();
    assertTrue(names(zip).containsAll(Set.of("index.html", "no-cooling-blower-runs.html")));
    assertArrayEquals(zip, given().get("/api/packs").then().extract().asByteArray());
  }

  @Test
  void aTreeWithErrorsBecomesNoPack() {
    var text = "---\ntitle: Half\ncomplaint: x\n---\n\n## A\n\n```check\nlook: light\n```\n\n- yes: [B](#b)\n";
    given().contentType("application/json").body(Map.of("basedOn", 0, "text", text, "author", "Tobin"))
        .put("/api/documents/trees/packs-half.md").then().statusCode(200);
    given().get("/api/packs/trees/packs-half.md").then().statusCode(409).body("detail", containsString("has errors"));
    given().get("/api/packs/shared/cautions/gas.md").then().statusCode(404);
  }

  @Test
  void aTreeThatIsLeftOutOfTheZipIsNamedWithTheReason() throws IOException {
    var text = "---\ntitle: Left behind\ncomplaint: x\n---\n\n## A\n\n```check\nlook: light\n```\n\n- yes: [B](#b)\n";
    given().contentType("application/json").body(Map.of("basedOn", 0, "text", text, "author", "Tobin"))
        .put("/api/documents/trees/packs-left-behind.md").then().statusCode(200);
    library.newest();
    var index = index(given().get("/api/packs").then().statusCode(200).extract().asByteArray());
    for (var page : List.of(index, given().accept("text/html").get("/transfer").then().extract().asString())) {
      assertTrue(page.contains("Left behind") && page.contains("line 12: ") && page.contains("; 1 more error"), page);
    }
    assertInstanceOf(Verify.Verdict.Intact.class, Verify.of(index.getBytes(StandardCharsets.UTF_8)));
  }

  private static String index(byte[] zip) throws IOException {
    try (var in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (var entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        if (entry.getName().equals("index.html")) {
          return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
      }
    }
    return "";
  }

  @Test
  void aSharedTextThatChangesChangesThePacksThatUseIt() {
    var before = given().get("/api/packs/trees/no-cooling-blower-runs.md").then().statusCode(200).extract()
        .asByteArray();
    var caution = given().get("/api/documents/shared/cautions/before-you-start.md").then().statusCode(200).extract()
        .jsonPath();
    given().contentType("application/json")
        .body(Map.of("basedOn", caution.getInt("entry.revision"), "text",
            caution.getString("text") + "\nNewly said here.\n", "author", "Tobin"))
        .put("/api/documents/shared/cautions/before-you-start.md").then().statusCode(200);
    library.newest();
    var after = given().get("/api/packs/trees/no-cooling-blower-runs.md").then().statusCode(200).extract().asString();
    assertTrue(
        after.contains("Newly said here.") && !new String(before, StandardCharsets.UTF_8).contains("Newly said here."));
    given().get("/tree/trees/no-cooling-blower-runs.md").then().body(containsString(digestIn(after)));
  }

  private static String digestIn(String page) {
    return page.replaceFirst("(?s).*<code class=\"digest\">([0-9a-f ]+)</code>.*", "$1");
  }

  private static Set<String> names(byte[] zip) throws IOException {
    var names = new HashSet<String>();
    try (var in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (var entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        names.add(entry.getName());
      }
    }
    return names;
  }
}
