package rungbook.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class GroupSyncTest {
  private final AtomicInteger written = new AtomicInteger();
  private final AtomicInteger onDisk = new AtomicInteger();
  private final AtomicInteger syncs = new AtomicInteger();

  @Test
  void oneCallerSyncsOnce() {
    var group = new GroupSync(syncs::incrementAndGet, failure -> false);
    group.await();
    group.await();
    assertEquals(2, syncs.get());
  }

  @Test
  void callersThatCameBeforeASyncBeganShareIt() throws Exception {
    var first = new CountDownLatch(1);
    var group = new GroupSync(() -> {
      syncs.incrementAndGet();
      waitFor(first);
    }, failure -> false);
    var threads = Executors.newCachedThreadPool();
    try {
      var waiting = new ArrayList<Future<?>>();
      waiting.add(threads.submit(group::await));
      while (syncs.get() == 0) {
        Thread.onSpinWait();
      }
      var started = new CountDownLatch(50);
      for (var i = 0; i < 50; i++) {
        waiting.add(threads.submit(() -> {
          started.countDown();
          group.await();
        }));
      }
      waitFor(started);
      Thread.sleep(100);
      first.countDown();
      for (var each : waiting) {
        each.get(30, TimeUnit.SECONDS);
      }
      // the one that was running and one for all others; a caller that the machine held up may need one more
      assertTrue(syncs.get() >= 2 && syncs.get() < 10, syncs + " syncs for 51 callers");
    } finally {
      threads.shutdown();
    }
  }

  @Test
  void nobodyReturnsBeforeASyncThatBeganAfterTheirWrite() throws Exception {
    var group = new GroupSync(() -> {
      var begun = written.get();
      Thread.yield();
      onDisk.accumulateAndGet(begun, Math::max);
    }, failure -> false);
    var threads = Executors.newFixedThreadPool(8);
    try {
      var early = new ArrayList<Future<Integer>>();
      for (var thread = 0; thread < 8; thread++) {
        early.add(threads.submit(() -> tooEarly(group)));
      }
      for (var each : early) {
        assertEquals(0, each.get(30, TimeUnit.SECONDS));
      }
    } finally {
      threads.shutdown();
    }
  }

  private int tooEarly(GroupSync group) {
    var early = 0;
    for (var i = 0; i < 2_000; i++) {
      var mine = written.incrementAndGet();
      group.await();
      early += onDisk.get() < mine ? 1 : 0;
    }
    return early;
  }

  @Test
  void afterAFailedSyncNothingIsAcknowledgedAnyMore() {
    var failure = new AtomicReference<RuntimeException>(
        new UncheckedIOException(new IOException("Input/output error")));
    var group = new GroupSync(() -> throwIt(failure), DiskFull::isReason);
    assertThrows(UncheckedIOException.class, group::await);
    failure.set(null);
    assertThrows(IllegalStateException.class, group::await);
  }

  @Test
  void aFullDiskCanHaveRoomAgain() {
    var failure = new AtomicReference<RuntimeException>(
        new UncheckedIOException(new IOException("No space left on device")));
    var group = new GroupSync(() -> throwIt(failure), DiskFull::isReason);
    assertThrows(UncheckedIOException.class, group::await);
    failure.set(null);
    group.await();
  }

  private static void throwIt(AtomicReference<RuntimeException> failure) {
    if (failure.get() != null) {
      throw failure.get();
    }
  }

  private static void waitFor(CountDownLatch latch) {
    try {
      assertTrue(latch.await(30, TimeUnit.SECONDS));
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }
}
