package rungbook.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Set;
import org.h2.mvstore.MVStoreException;
import rungbook.store.document.Refused;

/** Tells whether a library's database is damaged, and how to get the library back. */
public final class DamagedDatabase {
  // H2's ErrorCode: FILE_CORRUPTED_1, FILE_VERSION_ERROR_1, GENERAL_ERROR_1 (an inconsistency that H2 met), from its
  // documentation
  private static final Set<Integer> CORRUPTED = Set.of(90030, 90048, 50000);

  private DamagedDatabase() {}

  public static boolean isReason(Throwable failure) {
    return failure instanceof MVStoreException
        || (failure instanceof SQLException sql && CORRUPTED.contains(sql.getErrorCode()));
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
