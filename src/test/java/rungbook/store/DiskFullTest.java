package rungbook.store;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.store.document.DocumentPath;

/** A disk that fills up while people save: every save is answered truly, and room is all that it takes to go on. */
@Tag("server")
@QuarkusTest
@TestProfile(PowerCutTest.OnSimulatedDisk.class)
class DiskFullTest {
  private static final int DOCUMENTS = 5;
  private static final int TEXT_BYTES = 60_000;
  private static final int FAILURES = 12;
  private static final long CAPACITY_BYTES = 8 << 20;
  private final Random random = new Random(20260103);
  private final Map<String, String> acknowledged = new HashMap<>();
  private final Map<String, Integer> revisions = new HashMap<>();
  @Inject
  Store store;

  @AfterEach
  void makeRoom() {
    SimulatedDisk.limit(Long.MAX_VALUE);
  }

  @Test
  void aSaveSaysThatTheDiskIsFullAndTheNextOneWorksOnceThereIsRoom() {
    SimulatedDisk.limit(CAPACITY_BYTES);
    var failures = 0;
    for (var number = 0; failures < FAILURES; number++) {
      assertTrue(number < 1_000, "the disk never filled up");
      var answer = save("trees/full-" + number % DOCUMENTS + ".md");
      if (answer.statusCode() != 200) {
        failures++;
        assertEquals("507 The disk is full", answer.statusCode() + " " + answer.path("title"));
      }
      assertKept();
    }
    makeRoom();
    for (var document = 0; document < DOCUMENTS; document++) {
      assertEquals(200, save("trees/full-" + document + ".md").statusCode());
    }
    assertKept();
  }

  private Response save(String path) {
    var text = random.ints(TEXT_BYTES, 'a', 'z').collect(StringBuilder::new, StringBuilder::appendCodePoint,
        StringBuilder::append).toString();
    var answer = given().contentType("application/json").body(
        Map.of("basedOn", revisions.getOrDefault(path, 0), "text", text, "author", "Tobin"))
        .put("/api/documents/" + path);
    if (answer.statusCode() == 200) {
      acknowledged.put(path, text);
      revisions.put(path, answer.path("revision"));
    }
    return answer;
  }

  private void assertKept() {
    acknowledged.forEach((path, text) -> {
      var head = store.head(new DocumentPath(path)).orElseThrow();
      assertEquals(revisions.get(path), head.number());
      assertTrue(head.text().equals(text), path);
      assertEquals(Optional.empty(), store.firstBroken(new DocumentPath(path)));
    });
  }
}
