package rungbook.circuit;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Does numbered tasks on all cores. The calling thread works too, so busy helpers delay nobody. */
public final class ParallelTasks {

  private static final int CORES = Runtime.getRuntime().availableProcessors();
  private static final ThreadPoolExecutor HELPERS = helpers();

  private final int count;
  private final IntConsumer task;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();
  private final CountDownLatch left;

  private ParallelTasks(int count, IntConsumer task) {
    this.count = count;
    this.task = task;
    left = new CountDownLatch(count);
  }

  private static ThreadPoolExecutor helpers() {
    int most = Math.max(1, CORES - 1);
    var helpers = new ThreadPoolExecutor(most, most, 5, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
      var thread = new Thread(work, "circuit");
      thread.setDaemon(true);
      return thread;
    });
    helpers.allowCoreThreadTimeOut(true);
    return helpers;
  }

  /**
   * Returns when all tasks are done, or when one has failed and the others have stopped. A task must not touch what
   * another writes.
   *
   * @throws CancellationException if the calling thread is interrupted
   */
  public static void run(int count, IntConsumer task) {
    new ParallelTasks(count, task).run();
  }

  private void run() {
    List<? extends Future<?>> helpers = IntStream.range(1, Math.min(count, CORES))
        .mapToObj(i -> HELPERS.submit(this::work)).toList();
    work();
    if (failure.get() != null) {
      helpers.forEach(helper -> helper.cancel(true));
    }
    await(helpers);
    Throwable thrown = failure.get();
    if (thrown instanceof Error error) {
      throw error;
    }
    if (thrown != null) {
      throw (RuntimeException) thrown;
    }
  }

  private void work() {
    for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
      try {
        if (failure.get() == null) {
          task.accept(i);
        }
      } catch (RuntimeException | Error thrown) {
        failure.compareAndSet(null, thrown);
      } finally {
        left.countDown();
      }
    }
  }

  /** Interrupted helpers still finish what they are in, so that nobody writes after this call. */
  private void await(List<? extends Future<?>> helpers) {
    boolean isInterrupted = false;
    while (true) {
      try {
        left.await();
        break;
      } catch (InterruptedException stopped) {
        isInterrupted = true;
        failure.compareAndSet(null, new CancellationException("given up"));
        helpers.forEach(helper -> helper.cancel(true));
      }
    }
    if (isInterrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
