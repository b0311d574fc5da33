package rungbook.store;

import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Lets concurrent saves share one sync of the disk. Each waits for a sync that began after its own commit: the first
 * that finds no sync running runs one for all that have committed; later ones wait for the next.
 *
 * <p>After a failed sync the disk's content is unknown: the operating system may drop what it could not write and
 * report success the next time. So every later sync is refused, unless {@code passes} accepts the failure.
 */
final class GroupSync {
  private final Runnable sync;
  private final Predicate<RuntimeException> passes;
  private long lastTicket;
  private long syncedTicket;
  private boolean isRunning;
  private long failedTicket;
  private boolean isTrusted = true;
  private @Nullable RuntimeException failure;

  /** @param passes whether the next sync may be trusted after this failure */
  GroupSync(Runnable sync, Predicate<RuntimeException> passes) {
    this.sync = sync;
    this.passes = passes;
  }

  /** Returns once everything that the caller wrote before is on the disk. */
  void await() {
    var ticket = takeTicket();
    while (!isSynced(ticket)) {
      lead();
    }
  }

  private synchronized long takeTicket() {
    return ++lastTicket;
  }

  /** Waits while a sync runs. */
  private synchronized boolean isSynced(long ticket) {
    var interrupted = false;
    while (isRunning && syncedTicket < ticket) {
      try {
        wait();
      } catch (InterruptedException later) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    if (syncedTicket < ticket && (ticket <= failedTicket || !isTrusted)) {
      throw new IllegalStateException("this save, or one before it, could not be written to the disk", failure);
    }
    return syncedTicket >= ticket;
  }

  private void lead() {
    var covered = begin();
    if (covered == 0) {
      return;
    }
    try {
      sync.run();
      succeed(covered);
    } catch (RuntimeException | Error failed) {
      fail(covered, failed instanceof RuntimeException known ? known : new IllegalStateException(failed));
      throw failed;
    }
  }

  /** The last ticket that the sync covers; 0 while another one runs. */
  private synchronized long begin() {
    if (isRunning) {
      return 0;
    }
    isRunning = true;
    return lastTicket;
  }

  private synchronized void succeed(long covered) {
    isRunning = false;
    syncedTicket = covered;
    notifyAll();
  }

  private synchronized void fail(long covered, RuntimeException failed) {
    isRunning = false;
    failedTicket = covered;
    failure = failed;
    isTrusted &= passes.test(failed);
    notifyAll();
  }
}
