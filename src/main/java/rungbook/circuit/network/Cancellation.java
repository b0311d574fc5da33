package rungbook.circuit.network;

import java.util.concurrent.CancellationException;
import java.util.concurrent.locks.Lock;

/** Cancels long work: the caller interrupts the thread, and the work checks at every case, state and step. */
public final class Cancellation {

  private Cancellation() {}

  /**
   * Stops the work if its thread was interrupted; results that are already complete stay valid.
   *
   * @throws CancellationException if the thread was interrupted
   */
  public static void check() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("given up");
    }
  }

  /**
   * Waits for a lock.
   *
   * @throws CancellationException if the thread is interrupted while it waits
   */
  public static void lock(Lock lock) {
    try {
      lock.lockInterruptibly();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new CancellationException("given up");
    }
  }
}
