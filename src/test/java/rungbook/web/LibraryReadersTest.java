package rungbook.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import rungbook.store.LateStore;
import rungbook.store.document.Chain;
import rungbook.store.document.DocumentPath;
import rungbook.store.document.Revision;
import rungbook.web.service.CompiledLibrary;

/** Readers get the last good library while a new one takes long and when none can be made. */
@Timeout(60)
class LibraryReadersTest {
  private static final DocumentPath PATH = new DocumentPath("trees/late.md");
  private static final int READERS = 1_000;
  private static final Duration LONGEST = Duration.ofMillis(1_500);
  private final LateStore store = new LateStore();
  private final CompiledLibrary library = new CompiledLibrary(store);
  private final CountDownLatch begun = new CountDownLatch(1);
  private final CountDownLatch end = new CountDownLatch(1);

  @AfterEach
  void endTheCompile() {
    end.countDown();
  }

  @Test
  void doNotWaitForACompileThatDoesNotEnd() throws InterruptedException {
    store.change(List.of(revision(1, "First")));
    var good = library.newest();
    assertTrue(good.isNewest());
    changeAndCompileForever(List.of(revision(2, "Second")));
    var from = System.nanoTime();
    IntStream.range(0, READERS).forEach(reader -> assertSame(good.library(), library.current()));
    assertTrue(System.nanoTime() - from < LONGEST.toNanos(), "a reader waited");
    assertFalse(library.checked().isNewest());
    assertEquals(1, library.with(PATH).revision(PATH));
  }

  @Test
  void seeASavedTextBeforeTheLibraryIsChecked() throws InterruptedException {
    store.change(List.of(revision(1, "First")));
    library.newest();
    changeAndCompileForever(List.of(revision(2, "Second")));
    assertEquals("Second", library.tree(PATH).orElseThrow().tree().title());
    assertEquals("First", library.checked().tree(PATH).orElseThrow().tree().title());
  }

  @Test
  void areToldOfATextThatWasChangedOutsideBeforeTheLibraryIsChecked() throws InterruptedException {
    store.change(List.of(revision(1, "First")));
    library.newest();
    changeAndCompileForever(List.of(withOtherContent(revision(2, "Second"))));
    assertFalse(library.tree(PATH).orElseThrow().isSound());
  }

  @Test
  void waitOnlyForATreeThatIsNew() throws Exception {
    library.newest();
    changeAndCompileForever(List.of(revision(1, "First")));
    assertEquals("First", library.tree(PATH).orElseThrow().tree().title());
    assertTrue(library.with(new DocumentPath("trees/nowhere.md")).tree(PATH).isEmpty());
    var withIt = CompletableFuture.supplyAsync(() -> library.with(PATH));
    Thread.sleep(100);
    assertFalse(withIt.isDone());
    end.countDown();
    assertEquals(1, withIt.get(30, TimeUnit.SECONDS).revision(PATH));
  }

  @Test
  void getTheNewLibraryWithoutAskingForIt() throws InterruptedException {
    library.newest();
    store.change(List.of(revision(1, "First")));
    while (!library.checked().isNewest()) {
      Thread.sleep(1);
    }
    assertEquals(1, library.checked().revision(PATH));
  }

  @Test
  void readOnWhenNoNewLibraryCanBeMade() {
    var good = library.current();
    store.before = () -> {
      throw new IllegalStateException("the disk is gone");
    };
    store.change(List.of(revision(1, "First")));
    assertSame(good, library.newest().library());
    assertFalse(library.checked().isNewest());
    store.before = () -> {};
    assertEquals(1, library.newest().library().trees().size());
  }

  private void changeAndCompileForever(List<Revision> newest) throws InterruptedException {
    store.before = () -> {
      begun.countDown();
      await(end);
    };
    store.change(newest);
    begun.await();
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private static Revision revision(int number, String title) {
    var text = "---\ntitle: " + title + "\ncomplaint: x\n---\n\n## Fine\n\n```finding\nhealthy: yes\n```\n";
    var content = text.getBytes(UTF_8);
    var hash = Chain.of(PATH, number, Revision.Change.WRITTEN, "Odalys", "", Instant.EPOCH, Chain.Hash.NONE, content);
    return new Revision(PATH, number, Revision.Change.WRITTEN, "Odalys", "", Instant.EPOCH, Chain.Hash.NONE, hash,
        content);
  }

  private static Revision withOtherContent(Revision saved) {
    return new Revision(saved.path(), saved.number(), saved.change(), saved.author(), saved.message(), saved.at(),
        saved.parent(), saved.hash(), (saved.text() + "\nMore.\n").getBytes(UTF_8));
  }
}
