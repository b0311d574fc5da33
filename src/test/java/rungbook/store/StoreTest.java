package rungbook.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.hibernate.exception.ConstraintViolationException;
import javax.sql.DataSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Outcome;
import rungbook.store.document.Refused;
import rungbook.store.document.Revision;
import rungbook.store.document.Save;
import rungbook.store.document.StoreLimits;

@Tag("server")
@QuarkusTest
class StoreTest {
  @Inject
  Store store;
  @Inject
  DataSource database;

  @Test
  void aFirstRunHasTheStarterLibrary() {
    assertTrue(store.head(new DocumentPath("shared/meters/field-meter.md")).isPresent());
    assertTrue(store.head(DocumentPath.COMPANY).isPresent());
  }

  @Test
  void revisionsAreAddedAndNoneIsChanged() {
    var path = new DocumentPath("trees/store-adds.md");
    save(path, 0, "one");
    save(path, 1, "two");
    assertEquals(List.of("one", "two"), Histories.all(store, path).stream().map(Revision::text).toList());
    assertEquals("two", store.head(path).orElseThrow().text());
    assertEquals(Optional.empty(), store.firstBroken(path));
  }

  @Test
  void savingTheSameTextAgainAddsNothing() {
    var path = new DocumentPath("trees/store-same.md");
    save(path, 0, "one");
    assertInstanceOf(Outcome.Unchanged.class, save(path, 1, "one"));
    assertEquals(1, Histories.all(store, path).size());
  }

  @Test
  void aSaveBasedOnAnOldRevisionIsKeptAsADraft() {
    var path = new DocumentPath("trees/store-conflict.md");
    save(path, 0, "one");
    save(path, 1, "two by the first");
    var lost = assertInstanceOf(Outcome.Conflict.class, save(path, 1, "two by the second"));
    assertEquals("two by the first", lost.current().text());
    assertEquals("two by the second", lost.draft().text());
    assertEquals("two by the second", store.drafts(path).get(0).text());
    store.discardDraft(lost.draft().id());
    assertTrue(store.drafts(path).isEmpty());
  }

  @Test
  void ofManyRacingSavesOneWinsAndEveryOtherTextIsKept() throws Exception {
    var path = new DocumentPath("trees/store-race.md");
    save(path, 0, "start");
    var outcomes = inParallel(8, racer -> save(path, 1, "by racer " + racer));
    assertEquals(1, outcomes.stream().filter(Outcome.Saved.class::isInstance).count());
    assertEquals(2, Histories.all(store, path).size());
    assertEquals(7, store.drafts(path).size());
  }

  @Test
  void racingFirstSavesOfOneNameKeepEveryText() throws Exception {
    var path = new DocumentPath("trees/store-race-new.md");
    inParallel(6, racer -> save(path, 0, "by racer " + racer));
    assertEquals(1, Histories.all(store, path).size());
    assertEquals(5, store.drafts(path).size());
  }

  @Test
  void aNameThatAnotherSaveHasJustTakenIsALostRaceAndNoCollision() {
    var path = new DocumentPath("trees/store-just-taken.md");
    save(path, 0, "one");
    var insert = QuarkusTransaction.requiringNew();
    assertThrows(ConstraintViolationException.class, () -> insert.run(() -> DocumentRow.insert(path)));
  }

  @Test
  void everyDamagedHistoryIsFound() throws SQLException {
    var changed = new DocumentPath("trees/store-damaged.md");
    var cutOff = new DocumentPath("trees/store-cut-off.md");
    for (var path : List.of(changed, cutOff, new DocumentPath("trees/store-sound.md"))) {
      save(path, 0, "one");
      save(path, 1, "two");
    }
    assertEquals(Map.of(), store.broken());
    execute("update revision set author = 'Nobody' where number = 1 and document_id = (select id from document"
        + " where path = '" + changed + "')");
    execute("update document set head = 3 where path = '" + cutOff + "'");
    assertEquals(Map.of(changed, 1, cutOff, 3), store.broken());
    assertEquals(Optional.of(1), store.firstBroken(changed));
    execute("update revision set author = 'Odalys' where author = 'Nobody'");
    execute("update document set head = 2 where path = '" + cutOff + "'");
    assertEquals(Map.of(), store.broken());
  }

  private void execute(String change) throws SQLException {
    try (var connection = database.getConnection(); var statement = connection.createStatement()) {
      assertEquals(1, statement.executeUpdate(change));
    }
  }

  @Test
  void aRemovedDocumentKeepsItsHistory() {
    var path = new DocumentPath("trees/store-removed.md");
    save(path, 0, "one");
    store.save(Save.removed(path, 1, "Tobin", "not needed"));
    assertFalse(store.head(path).orElseThrow().isThere());
    assertTrue(store.heads().stream().noneMatch(head -> head.path().equals(path)));
    assertEquals("one", store.revision(path, 1).orElseThrow().text());
  }

  @Test
  void aPictureComesBackByteForByte() {
    var path = new DocumentPath("trees/store-board.gif");
    var bytes = new byte[StoreLimits.PICTURE];
    IntStream.range(0, bytes.length).forEach(i -> bytes[i] = (byte) (i * 31));
    System.arraycopy("GIF89a".getBytes(UTF_8), 0, bytes, 0, 6);
    store.save(Save.written(path, 0, bytes, "Tobin", ""));
    assertArrayEquals(bytes, store.head(path).orElseThrow().content());
  }

  @Test
  void aNameThatIsAnothersOnSomeComputerIsRefused() {
    save(new DocumentPath("trees/store-Key.md"), 0, "one");
    var refused = assertThrows(Refused.class, () -> save(new DocumentPath("trees/store-key.md"), 0, "two"));
    assertTrue(refused.getMessage().contains("`trees/store-Key.md`"), refused.getMessage());
    assertTrue(store.head(new DocumentPath("trees/store-key.md")).isEmpty());
  }

  @Test
  void ofNamesThatCollideAndRaceOneIsTaken() throws Exception {
    inParallel(6, racer -> {
      try {
        return save(new DocumentPath("trees/store-race-key" + (racer % 2 == 0 ? "A" : "a") + ".md"), 0,
            "by racer " + racer);
      } catch (Refused other) {
        return null;
      }
    });
    var upper = store.head(new DocumentPath("trees/store-race-keyA.md"));
    var lower = store.head(new DocumentPath("trees/store-race-keya.md"));
    assertTrue(upper.isPresent() != lower.isPresent());
  }

  @Test
  void aStaleRemovalTakesNothingOutAndKeepsNoEmptyDraft() {
    var path = new DocumentPath("trees/store-stale.md");
    save(path, 0, "one");
    save(path, 1, "two");
    var late = assertInstanceOf(Outcome.NotRemoved.class, store.save(Save.removed(path, 1, "Tobin", "")));
    assertEquals(2, late.current().number());
    assertTrue(store.drafts(path).isEmpty() && store.head(path).orElseThrow().isThere());
  }

  @Test
  void whatNeverWasCannotBeRemoved() {
    var path = new DocumentPath("trees/store-never.md");
    assertThrows(Refused.NotThere.class, () -> store.save(Save.removed(path, 0, "Tobin", "")));
    assertTrue(Histories.all(store, path).isEmpty());
  }

  @Test
  void aRevisionNeedsAnAuthor() {
    var path = new DocumentPath("trees/store-nobody.md");
    assertThrows(Refused.class, () -> Save.written(path, 0, new byte[0], "  ", ""));
  }

  private Outcome save(DocumentPath path, int basedOn, String text) {
    return store.save(Save.written(path, basedOn, text.getBytes(UTF_8), "Odalys", "test"));
  }

  private static List<Outcome> inParallel(int racers, IntFunction<Outcome> racer) throws Exception {
    var threads = Executors.newFixedThreadPool(racers);
    try {
      var tasks = IntStream.range(0, racers).<Callable<Outcome>>mapToObj(i -> () -> racer.apply(i)).toList();
      var outcomes = new ArrayList<Outcome>();
      for (var future : threads.invokeAll(tasks)) {
        outcomes.add(future.get());
      }
      return outcomes;
    } finally {
      threads.shutdown();
    }
  }
}
