package rungbook.store;

import java.nio.file.Path;
import java.sql.SQLException;
import rungbook.store.document.Refused;

/** Tells whether a library's database is damaged, and how to get the library back. */
public final class DamagedDatabase {
  private static final String DATABASE = "org.h2.";
  /** The code of what the pool of connections reports itself, such as that it waited too long. */
  private static final int NOT_THE_DATABASES = 0;

  private DamagedDatabase() {}

  /**
   * Whether a start failed in the database. A start sends only statements of its own, which work on a sound library, so
   * even an error of syntax comes from what the file says. Asked after {@link DatabaseLock} and {@link DiskFull}.
   */
  public static boolean isReason(Throwable failure) {
    return failure instanceof SQLException sql ? sql.getErrorCode() != NOT_THE_DATABASES : isThrownByIt(failure);
  }

  private static boolean isThrownByIt(Throwable failure) {
    var trace = failure.getStackTrace();
    return !(failure instanceof Error) && trace.length > 0 && trace[0].getClassName().startsWith(DATABASE);
  }

  static Refused refused(Path folder, String how) {
    return new Refused("the library's database in `" + folder + "` is damaged: " + how, cure());
  }

  /** What to do about it. */
  public static String cure() {
    return "keep a copy of the folder as it is, then put a backup of the whole folder in its place; "
        + "to begin a new library, choose an empty folder with --data FOLDER";
  }
}
