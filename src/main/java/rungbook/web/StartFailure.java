package rungbook.web;

import java.net.BindException;
import org.jspecify.annotations.Nullable;
import rungbook.store.DamagedDatabase;
import rungbook.store.DatabaseLock;
import rungbook.store.DiskFull;
import rungbook.store.document.Refused;

/** Says in a sentence why the server could not start, and what to do about it. */
final class StartFailure {
  private static final int MOST_PORT = 65_535;

  private StartFailure() {}

  static String reason(Throwable failure) {
    if (DiskFull.isReason(failure)) {
      return "the disk that holds the library is full; make room on it and start again, what was saved is safe";
    }
    var root = failure;
    for (var cause = failure; cause != null; cause = cause.getCause()) {
      var known = known(cause);
      if (!known.isEmpty()) {
        return known;
      }
      root = cause;
    }
    return root.getClass().getSimpleName() + (root.getMessage() == null ? "" : ": " + root.getMessage().strip());
  }

  private static String known(Throwable cause) {
    if (cause instanceof BindException) {
      return "the port is taken; stop the program that has it, or choose another with -Drungbook.port=PORT";
    }
    if (DatabaseLock.isReason(cause)) {
      return "another Rungbook has this library open; stop it, or choose another folder with -Drungbook.data=FOLDER";
    }
    if (DamagedDatabase.isReason(cause)) {
      return "the library's database is damaged: " + firstLine(cause.getMessage()) + "; " + DamagedDatabase.cure();
    }
    return cause instanceof Refused refused ? refused.says() + "; " + refused.hint() : "";
  }

  private static String firstLine(@Nullable String message) {
    return String.valueOf(message).lines().findFirst().orElse("").strip();
  }

  /** @throws IllegalArgumentException with a sentence, when it is no port */
  static void requirePort(String port) {
    if (!port.matches("\\d{1,5}") || Integer.parseInt(port) > MOST_PORT) {
      throw new IllegalArgumentException(
          "`" + port + "` is no port; choose one from 1 to " + MOST_PORT + " with --port PORT");
    }
  }
}
