package rungbook.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import rungbook.store.LateStore;
import rungbook.web.service.CompiledLibrary;

/** Readers get the last good library while a new one takes long and when none can be made. */
class LibraryReadersTest {

  @Test
  void areNotHeldUpByACompileThatDoesNotEnd() throws InterruptedException {
    LateStore store = new LateStore();
    CompiledLibrary library = new CompiledLibrary(store);
    var good = library.current();
    var begun = new CountDownLatch(1);
    var end = new CountDownLatch(1);
    store.before = () -> {
      begun.countDown();
      await(end);
    };
    store.changes = 1;
    Thread compiler = new Thread(library::current);
    compiler.start();
    begun.await();
    assertSame(good, assertTimeoutPreemptively(Duration.ofSeconds(20), library::current));
    end.countDown();
    compiler.join();
  }

  @Test
  void readOnWhenNoNewLibraryCanBeMade() {
    LateStore store = new LateStore();
    CompiledLibrary library = new CompiledLibrary(store);
    var good = library.current();
    store.before = () -> {
      throw new IllegalStateException("the disk is gone");
    };
    store.changes = 1;
    assertSame(good, library.current());
    store.before = () -> {};
    assertEquals(List.of(), library.current().trees());
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
