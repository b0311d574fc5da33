package rungbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import rungbook.cli.watch.Watching;
import rungbook.report.Report;

/**
 * Checks files, once or after every save.
 *
 * @param fix whether known fixes are applied first
 */
record CheckRun(Console terminal, Format format, boolean watch, boolean fix, List<String> paths) {

  /**
   * @return the exit code: 0 clean, 1 problems
   * @throws UsageError if there is nothing to check
   */
  int run() throws IOException, InterruptedException {
    if (watch && format != Format.TEXT) {
      throw new UsageError("`--watch` works only with the text format", "leave `--format` out");
    }
    if (watch && fix) {
      throw new UsageError("`--watch` does not change files", "leave `--fix` out, or run `check --fix` once");
    }
    return watch ? watchOn() : check(InputFiles.files(paths, terminal));
  }

  private int check(Collection<Path> files) throws IOException {
    Report found = Checker.check(files, terminal);
    Report report = fix && Fixing.fix(found.problems(), terminal) > 0 ? Checker.check(files, terminal) : found;
    terminal.out().print(format.print(report, terminal.style()));
    terminal.out().flush();
    return report.isClean() ? 0 : 1;
  }

  /**
   * Runs until the process is stopped.
   *
   * @throws UsageError if a requested path no longer exists
   */
  private int watchOn() throws IOException, InterruptedException {
    while (!Thread.interrupted()) {
      Collection<Path> files = InputFiles.files(paths, terminal);
      try (Watching watching = Watching.of(Batch.folders(files, terminal.home()))) {
        check(files);
        terminal.out().println("watching: save a file to check again, Ctrl-C ends");
        terminal.out().flush();
        watching.await();
      }
      terminal.out().println();
    }
    return 0;
  }
}
