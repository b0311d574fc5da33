package rungbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungbook.report.Report;

@Command(name = "check", description = "Say what is wrong with trees and what they share",
    footer = {"", "exit code: 0 clean (notes may stand), 1 problems, 2 misuse"})
final class Check implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "PATH", arity = "1..*", description = "a file, a folder of trees, or a whole library")
  private List<String> paths;

  @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text",
      description = "text for people (the default), json or sarif for programs")
  private String formatName;

  @Option(names = "--watch", description = "check again after every save, until Ctrl-C")
  private boolean watch;

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  private boolean help;

  Check(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Format format = Format.named(formatName);
    if (watch && format != Format.TEXT) {
      throw new Misuse("`--watch` prints for people only", "leave `--format` out");
    }
    return watch ? watch() : run(format, Asked.files(paths, terminal));
  }

  private int run(Format format, Collection<Path> files) throws IOException {
    Report report = Checking.check(files, terminal);
    terminal.out().print(format.print(report, terminal.style()));
    terminal.out().flush();
    return report.isClean() ? 0 : 1;
  }

  /** Goes on until the process is stopped. @throws Misuse when a path that was asked for is gone */
  private int watch() throws IOException, InterruptedException {
    while (!Thread.interrupted()) {
      Collection<Path> files = Asked.files(paths, terminal);
      try (Watching watching = Watching.of(Batch.folders(files, terminal.home()))) {
        run(Format.TEXT, files);
        terminal.out().println("watching: save a file to check again, Ctrl-C ends");
        terminal.out().flush();
        watching.await();
      }
      terminal.out().println();
    }
    return 0;
  }
}
