package rungbook.store;

import java.io.IOException;
import java.util.Locale;

/** Tells whether something failed because the disk, or the user's share of it, is full. */
public final class DiskFull {
  private DiskFull() {}

  public static boolean isReason(Throwable failure) {
    for (var cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof IOException && says(String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT))) {
        return true;
      }
    }
    return false;
  }

  // the texts of ENOSPC and EDQUOT on Linux and macOS, and of ERROR_DISK_FULL on Windows; from memory
  private static boolean says(String message) {
    return message.contains("no space left") || message.contains("quota exceeded")
        || message.contains("not enough space on the disk");
  }
}
