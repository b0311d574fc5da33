package rungbook.cli;

import java.io.IOException;

/** An error in the command line, with a hint how to fix it. The message has no final period. */
final class UsageError extends RuntimeException {

  private static final long serialVersionUID = 1;

  static final int EXIT = 2;

  private final String hint;

  UsageError(String says, String hint) {
    super(says, null, false, false);
    this.hint = hint;
  }

  /** The error of a file or folder that could not be read or written. */
  static UsageError of(IOException failed) {
    return new UsageError("cannot read or write: " + failed, "check the path and its permissions");
  }

  /** @return the exit code */
  int tell(Console terminal) {
    terminal.err().println("rungbook: " + getMessage());
    terminal.err().println("  hint: " + hint);
    terminal.err().flush();
    return EXIT;
  }
}
