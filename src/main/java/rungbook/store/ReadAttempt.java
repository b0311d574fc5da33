package rungbook.store;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.transaction.Status;
import java.util.concurrent.Callable;
import java.util.function.Supplier;

/**
 * Reads in the transaction that there is, or in one of its own. A write that finds the disk full closes the database,
 * and the connections that had it open fail once; a new one opens it again. So what fails for that reason outside of a
 * transaction is read a second time.
 */
final class ReadAttempt {
  private ReadAttempt() {}

  static <T> T run(Callable<T> read) {
    if (QuarkusTransaction.getStatus() != Status.STATUS_NO_TRANSACTION) {
      return QuarkusTransaction.joiningExisting().call(read);
    }
    return twice(() -> QuarkusTransaction.joiningExisting().call(read));
  }

  /** What a full disk lets fail is done once more. */
  static <T> T twice(Supplier<T> read) {
    try {
      return read.get();
    } catch (RuntimeException failed) {
      if (!DiskFull.isReason(failed)) {
        throw failed;
      }
      return read.get();
    }
  }
}
