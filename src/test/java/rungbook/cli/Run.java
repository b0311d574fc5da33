package rungbook.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Optional;
import rungbook.report.Style;

/** One run of the program within a test: what it printed and how it ended. */
record Run(int exit, String out, String err) {

  /** From a folder, as if nobody watched. */
  static Run in(Path folder, String... arguments) {
    return in(folder, Optional.empty(), arguments);
  }

  /** The same with a folder for what a later run may use. */
  static Run withCache(Path cache, Path folder, String... arguments) {
    return in(folder, Optional.of(cache), arguments);
  }

  private static Run in(Path folder, Optional<Path> cache, String... arguments) {
    var out = new StringWriter();
    var err = new StringWriter();
    Console terminal = new Console(new PrintWriter(out), new PrintWriter(err), Style.PLAIN, false,
        folder.toAbsolutePath(),
        Optional.of(Path.of("").toAbsolutePath()), cache);
    int exit = Main.run(terminal, arguments);
    terminal.out().flush();
    terminal.err().flush();
    return new Run(exit, out.toString(), err.toString());
  }
}
