package rungbook.circuit.network;

import java.util.concurrent.CancellationException;
import java.util.concurrent.locks.Lock;

/** Lets long work be given up: its thread is interrupted, and the work looks at every case, state and step. */
public final class Cancellation {

  private Cancellation() {}

  /** Gives up if somebody asked for it. What was finished before is whole and stays. */
  public static void check() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("given up");
    }
  }

  /** Waits for a lock, as long as nobody asks to give up. */
  public static void lock(Lock lock) {
    try {
      lock.lockInterruptibly();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new CancellationException("given up");
    }
  }
}
