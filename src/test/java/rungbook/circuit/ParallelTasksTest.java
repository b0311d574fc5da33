package rungbook.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Test;
import rungbook.circuit.network.Cancellation;

/** Tasks on all cores: each once, and none goes on after the call has returned. */
class ParallelTasksTest {

  private static final int TASKS = 50;

  @Test
  void eachTaskIsDoneOnce() {
    var done = new AtomicIntegerArray(TASKS);
    ParallelTasks.run(TASKS, done::incrementAndGet);
    for (int i = 0; i < TASKS; i++) {
      assertEquals(1, done.get(i));
    }
  }

  @Test
  void theFirstFailureIsThrownAndStopsTheRest() {
    var failure = new IllegalStateException("as expected");
    var done = new AtomicInteger();
    assertSame(failure, assertThrows(IllegalStateException.class, () -> ParallelTasks.run(10_000, i -> {
      done.incrementAndGet();
      throw failure;
    })));
    assertTrue(done.get() <= Runtime.getRuntime().availableProcessors(), done + " tasks were begun");
  }

  /** Whichever thread has a task when the caller is interrupted stops too. */
  @Test
  void anInterruptReachesEveryThread() throws InterruptedException {
    var begun = new CountDownLatch(1);
    var running = new AtomicInteger();
    var thrown = new AtomicInteger();
    var caller = new Thread(() -> {
      try {
        ParallelTasks.run(TASKS, i -> {
          running.incrementAndGet();
          begun.countDown();
          try {
            while (true) {
              Cancellation.check();
              Thread.onSpinWait();
            }
          } finally {
            running.decrementAndGet();
          }
        });
      } catch (CancellationException stopped) {
        thrown.incrementAndGet();
        assertEquals(0, running.get());
      }
    });
    caller.start();
    begun.await();
    caller.interrupt();
    caller.join(10_000);
    assertEquals(1, thrown.get());
    assertEquals(0, running.get());
  }
}
