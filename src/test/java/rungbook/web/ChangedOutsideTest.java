package rungbook.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.List;
import javax.sql.DataSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.store.Store;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Save;
import rungbook.web.service.CompiledLibrary;

/** Words of the library are changed in its database with SQL, past the store: no pack is made of them. */
@Tag("server")
@QuarkusTest
class ChangedOutsideTest {
  private static final DocumentPath ELSEWHERE = new DocumentPath("trees/changed-elsewhere.md");
  @Inject
  Store store;
  @Inject
  CompiledLibrary library;
  @Inject
  DataSource database;

  @Test
  void aTreeThatIsNotWhatWasSavedBecomesNoPackUntilItIsPutBack() throws SQLException {
    var path = new DocumentPath("trees/no-cooling-blower-runs.md");
    var before = store.head(path).orElseThrow().content();
    change(path, new String(before, StandardCharsets.UTF_8).replace("five minutes", "nine minutes")
        .getBytes(StandardCharsets.UTF_8));
    assertEquals(List.of("changed-outside"), codes(path));
    given().get("/api/packs/" + path).then().statusCode(409);
    given().get("/tree/" + path).then().statusCode(200).body(containsString("this is not the text that was saved"));
    change(path, before);
    assertEquals(List.of(), codes(path));
    given().get("/api/packs/" + path).then().statusCode(200);
  }

  @Test
  void aSharedTextThatIsNotWhatWasSavedIsTakenIntoNoPack() throws SQLException {
    var meter = new DocumentPath("shared/meters/field-meter.md");
    var before = store.head(meter).orElseThrow().content();
    change(meter, (new String(before, StandardCharsets.UTF_8) + "\nMore.\n").getBytes(StandardCharsets.UTF_8));
    assertEquals(List.of("changed-outside"), codes(meter));
    assertTrue(
        library.current().trees().stream().noneMatch(tree -> tree.isSound() && uses(tree.tree().source().text())));
    change(meter, before);
    assertTrue(codes(meter).isEmpty());
  }

  private static boolean uses(String text) {
    return text.contains("meter: field-meter");
  }

  private List<String> codes(DocumentPath path) {
    library.newest();
    return library.found(path).shown().stream().map(problem -> problem.code().name()).distinct().toList();
  }

  /** Changes a newest revision's bytes, and makes the library look at the store anew by saving something else. */
  private void change(DocumentPath path, byte[] content) throws SQLException {
    try (var connection = database.getConnection();
        var update = connection.prepareStatement("update revision r set content = ?"
            + " where r.document_id = (select id from document where path = ?) and r.number = (select head from "
            + "document where path = ?)")) {
      update.setBytes(1, content);
      update.setString(2, path.text());
      update.setString(3, path.text());
      assertEquals(1, update.executeUpdate());
    }
    var base = store.head(ELSEWHERE).map(head -> head.number()).orElse(0);
    store.save(Save.text(ELSEWHERE, base, "# Elsewhere " + base + "\n", "Odalys", ""));
  }
}
