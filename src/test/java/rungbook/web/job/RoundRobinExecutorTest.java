package rungbook.web.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Owners take turns, a job can be stopped at any time, and a stopped job holds nothing. */
class RoundRobinExecutorTest {
  private static final Duration LONG = Duration.ofMinutes(5);
  private RoundRobinExecutor<String> executor = new RoundRobinExecutor<>("test", 1, LONG);
  private final List<String> order = Collections.synchronizedList(new ArrayList<>());

  @AfterEach
  void close() {
    executor.close();
  }

  @Test
  void ownersTakeTurnsWhoeverCameFirst() throws Exception {
    var free = new CountDownLatch(1);
    var begun = new CountDownLatch(1);
    var first = submit("ann", () -> {
      begun.countDown();
      await(free);
    });
    await(begun);
    var jobs = new ArrayList<Job<String>>();
    for (var name : List.of("ann 1", "ann 2", "ann 3", "bob 1", "bob 2", "cai 1")) {
      jobs.add(submit(name.substring(0, 3), () -> order.add(name)));
    }
    free.countDown();
    assertEquals("done", first.get(10, TimeUnit.SECONDS));
    for (var job : jobs) {
      job.get(10, TimeUnit.SECONDS);
    }
    assertEquals(List.of("ann 1", "bob 1", "cai 1", "ann 2", "bob 2", "ann 3"), order);
  }

  @Test
  void aStoppedJobFreesItsWorkerAndLeavesNoInterruptBehind() throws Exception {
    var begun = new CountDownLatch(1);
    var endless = submit("ann", () -> sleepUntilInterrupted(begun));
    await(begun);
    var interrupted = new ArrayList<Boolean>();
    var next = submit("bob", () -> interrupted.add(Thread.currentThread().isInterrupted()));
    endless.stop(Job.StopReason.REPLACED);
    next.get(10, TimeUnit.SECONDS);
    assertEquals(List.of(false), interrupted);
    assertThrows(CancellationException.class, endless::get);
    assertEquals(Job.StopReason.REPLACED, endless.stopReason());
  }

  @Test
  void aJobThatRunsTooLongIsStoppedAndOneThatWaitsIsNot() throws Exception {
    executor.close();
    executor = new RoundRobinExecutor<>("test", 1, Duration.ofMillis(300));
    var endless = submit("ann", () -> sleepUntilInterrupted(new CountDownLatch(1)));
    var waiting = submit("ann", () -> order.add("waited"));
    assertEquals("done", waiting.get(10, TimeUnit.SECONDS));
    assertThrows(CancellationException.class, endless::get);
    assertEquals(Job.StopReason.TOO_LONG, endless.stopReason());
  }

  @Test
  void aJobIsStoppedWhenTheLastAskerLeavesAndNotBefore() throws Exception {
    var begun = new CountDownLatch(1);
    var endless = submit("ann", () -> sleepUntilInterrupted(begun));
    await(begun);
    assertTrue(endless.join());
    endless.leave();
    assertFalse(endless.isDone());
    endless.leave();
    assertTrue(endless.isCancelled());
    assertFalse(endless.join());
    assertEquals(Job.StopReason.NOBODY_WAITS, endless.stopReason());
  }

  @Test
  void oneOwnerCannotFillTheQueueAndStoppedJobsMakeRoom() {
    submit("ann", () -> sleepUntilInterrupted(new CountDownLatch(1)));
    var jobs = new ArrayList<Job<String>>();
    for (int i = 0; i < RoundRobinExecutor.MOST_OF_ONE_OWNER; i++) {
      jobs.add(submit("bob", () -> order.add("bob")));
    }
    assertThrows(RejectedExecutionException.class, () -> submit("bob", () -> order.add("bob")));
    submit("cai", () -> order.add("cai"));
    jobs.get(3).stop(Job.StopReason.REPLACED);
    submit("bob", () -> order.add("bob"));
  }

  @Test
  void everyJobIsReportedDoneOnceAndClosingStopsAll() throws Exception {
    var done = new AtomicInteger();
    var begun = new CountDownLatch(1);
    var jobs = List.of(executor.submit("ann", () -> sleepUntilInterrupted(begun), done::incrementAndGet),
        executor.submit("bob", () -> "never", done::incrementAndGet));
    await(begun);
    executor.close();
    for (var job : jobs) {
      assertThrows(CancellationException.class, job::get);
      assertEquals(Job.StopReason.SERVER_STOPS, job.stopReason());
    }
    assertEquals(2, done.get());
    assertThrows(RejectedExecutionException.class, () -> submit("ann", () -> order.add("late")));
    waitUntilIdle();
  }

  private void waitUntilIdle() throws InterruptedException {
    for (int i = 0; i < 200 && executor.load() > 0; i++) {
      Thread.sleep(20);
    }
    assertEquals(0, executor.load());
  }

  private interface Work {
    void run() throws InterruptedException;
  }

  private Job<String> submit(String owner, Work work) {
    return executor.submit(owner, () -> {
      work.run();
      return "done";
    }, () -> {});
  }

  private static void await(CountDownLatch latch) throws InterruptedException {
    assertTrue(latch.await(10, TimeUnit.SECONDS));
  }

  private static String sleepUntilInterrupted(CountDownLatch begun) throws InterruptedException {
    begun.countDown();
    Thread.sleep(LONG.toMillis());
    return "never";
  }
}
