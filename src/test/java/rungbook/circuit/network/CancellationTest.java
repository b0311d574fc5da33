package rungbook.circuit.network;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import java.util.concurrent.locks.ReentrantLock;
import org.junit.jupiter.api.Test;

/** Work stops when its thread is interrupted, and the thread still says so afterward. */
class CancellationTest {

  @Test
  void workGoesOnUntilItsThreadIsInterrupted() {
    Cancellation.check();
    Thread.currentThread().interrupt();
    assertThrows(CancellationException.class, Cancellation::check);
    assertTrue(Thread.interrupted());
  }

  @Test
  void waitingForALockEndsWithAnInterrupt() {
    var lock = new ReentrantLock();
    Thread.currentThread().interrupt();
    assertThrows(CancellationException.class, () -> Cancellation.lock(lock));
    assertTrue(Thread.interrupted());
    assertFalse(lock.isLocked());
    Cancellation.lock(lock);
    assertTrue(lock.isHeldByCurrentThread());
  }
}
