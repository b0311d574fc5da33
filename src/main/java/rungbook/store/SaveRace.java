package rungbook.store;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.persistence.LockTimeoutException;
import jakarta.persistence.OptimisticLockException;
import jakarta.persistence.PessimisticLockException;
import java.util.concurrent.Callable;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import org.hibernate.StaleStateException;
import org.hibernate.exception.ConstraintViolationException;

/**
 * Runs transactions that race for the same documents. A transaction loses when another one commits between its read and
 * its write; it runs again and then reads what the other one wrote.
 *
 * <p>A long transaction could lose to busy writers forever while they wait for the rows it holds. So after a few tries
 * it runs alone.
 */
final class SaveRace {
  private static final int MOST_TRIES = 20;
  private static final int TRIES_BESIDE_OTHERS = 4;
  private final ReadWriteLock turns = new ReentrantReadWriteLock();

  /** Runs the work in its own transaction, again after each lost race. */
  <T> T run(Callable<T> work) {
    for (var tries = 1;; tries++) {
      var turn = tries < TRIES_BESIDE_OTHERS ? turns.readLock() : turns.writeLock();
      turn.lock();
      try {
        return QuarkusTransaction.requiringNew().call(work);
      } catch (RuntimeException failure) {
        if (!isLost(failure) || tries == MOST_TRIES) {
          throw failure;
        }
      } finally {
        turn.unlock();
      }
    }
  }

  private static boolean isLost(Throwable failure) {
    for (var cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof OptimisticLockException || cause instanceof StaleStateException
          || cause instanceof ConstraintViolationException || cause instanceof LockTimeoutException
          || cause instanceof PessimisticLockException) {
        return true;
      }
    }
    return false;
  }
}
