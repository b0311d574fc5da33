package rungbook.store;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Somebody takes the database's file away under the running server. */
@Tag("server")
@QuarkusTest
@TestProfile(DatabaseFileTest.InAFile.class)
class DatabaseFileTest {
  private static final String PATH = "/api/documents/trees/gone.md";
  @ConfigProperty(name = "rungbook.data")
  Path folder;

  /** The library in a file, with the settings of the program. */
  public static final class InAFile implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      try {
        var folder = Files.createTempDirectory("rungbook-gone").toAbsolutePath();
        return Map.of("rungbook.data", folder.toString(), "quarkus.datasource.jdbc.url",
            "jdbc:h2:file:" + folder + "/rungbook;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE");
      } catch (IOException failed) {
        throw new UncheckedIOException(failed);
      }
    }
  }

  @Test
  void aSaveIntoAFileThatIsGoneIsRefusedUntilItIsBack() throws IOException {
    var file = folder.resolve(DataFolder.DATABASE);
    var away = folder.resolve("away");
    assertEquals(200, save(0, "one").statusCode());
    Files.move(file, away);
    assertRefused();
    Files.copy(away, file);
    assertRefused();
    given().get(PATH).then().statusCode(200).body("text", org.hamcrest.Matchers.equalTo("one"));
    given().get("/api/export").then().statusCode(200);
    Files.move(away, file, StandardCopyOption.REPLACE_EXISTING);
    assertEquals(200, save(1, "two").statusCode());
  }

  private static void assertRefused() {
    save(1, "lost").then().statusCode(503).body("detail", containsString("deleted, moved or replaced"))
        .body("hint", containsString("/transfer"));
  }

  private static Response save(int basedOn, String text) {
    return given().contentType("application/json").body(Map.of("basedOn", basedOn, "text", text, "author", "Tobin"))
        .put(PATH);
  }

  @Test
  void aLibraryInNoFileHasNoneToLookFor() throws IOException {
    var empty = Files.createTempDirectory("rungbook-none");
    assertEquals(Optional.empty(), DatabaseFile.in(empty));
    assertTrue(DatabaseFile.in(folder).isPresent());
  }
}
