package rungbook.store;

import java.sql.SQLException;

/** Tells whether another program has the library open. */
public final class DatabaseLock {
  /** H2's code for a database file that another process has locked. */
  private static final int H2_FILE_IN_USE = 90020;

  private DatabaseLock() {}

  public static boolean isReason(Throwable failure) {
    return failure instanceof SQLException sql && sql.getErrorCode() == H2_FILE_IN_USE;
  }
}
