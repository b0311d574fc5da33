package rungbook.store;

import java.io.IOException;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Tells whether something failed because the disk, or the user's share of it, is full. */
public final class DiskFull {
  private DiskFull() {}

  public static boolean isReason(Throwable failure) {
    return isReason(failure, Collections.newSetFromMap(new IdentityHashMap<>()));
  }

  // a transaction that cannot commit keeps what the database said among its suppressed exceptions
  private static boolean isReason(@Nullable Throwable failure, Set<Throwable> seen) {
    return failure != null && seen.add(failure)
        && ((failure instanceof IOException && says(String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT)))
            || isReason(failure.getCause(), seen)
            || Stream.of(failure.getSuppressed()).anyMatch(other -> isReason(other, seen)));
  }

  // the texts of ENOSPC and EDQUOT on Linux and macOS, and of ERROR_DISK_FULL on Windows; from memory
  private static boolean says(String message) {
    return message.contains("no space left") || message.contains("quota exceeded")
        || message.contains("not enough space on the disk");
  }
}
