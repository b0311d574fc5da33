package rungbook.web.job;

import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Work that one or more askers wait for, and that can be stopped: its thread is interrupted. Threads may share it.
 *
 * @param <T> what it makes
 */
public final class Job<T> extends FutureTask<T> {
  private final String owner;
  private final Runnable whenDone;
  private final AtomicInteger askers = new AtomicInteger(1);
  private final AtomicReference<StopReason> reason = new AtomicReference<>();

  /** Why a job was stopped. */
  public enum StopReason { TOO_LONG, REPLACED, NOBODY_WAITS, SERVER_STOPS }

  /**
   * @param owner whose turn it uses.
   * @param whenDone what to do once it is finished, failed or stopped
   */
  public Job(String owner, Callable<T> work, Runnable whenDone) {
    super(work);
    this.owner = owner;
    this.whenDone = whenDone;
  }

  public String owner() {
    return owner;
  }

  /** Adds an asker; false when all of them have left and it is stopped. */
  public boolean join() {
    return askers.updateAndGet(count -> count == 0 ? 0 : count + 1) > 0;
  }

  /** One asker no longer waits; without any, the job is stopped. */
  public void leave() {
    if (askers.updateAndGet(count -> Math.max(0, count - 1)) == 0) {
      stop(StopReason.NOBODY_WAITS);
    }
  }

  /** Stops it, whether it waits or runs. A finished job stays finished, a stopped one keeps its first reason. */
  public void stop(StopReason why) {
    if (reason.compareAndSet(null, why)) {
      cancel(true);
    }
  }

  /** Why it was stopped; work that gave up by itself did so because its thread was asked to end. */
  public StopReason stopReason() {
    var why = reason.get();
    return why == null ? StopReason.SERVER_STOPS : why;
  }

  @Override
  protected void done() {
    whenDone.run();
  }
}
