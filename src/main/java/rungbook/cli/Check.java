package rungbook.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "check", description = "Report problems in trees and in what they share",
    footer = {"", "exit code: 0 clean (notes are allowed), 1 problems, 2 misuse"})
final class Check implements Callable<Integer> {

  private final Console terminal;

  @Parameters(paramLabel = "PATH", arity = "1..*", description = "a file, a folder of trees, or a whole library")
  private List<String> paths;

  @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text",
      description = "text for people (the default), json or sarif for programs")
  private String format;

  @Option(names = "--watch", description = "check again after every save, until Ctrl-C")
  private boolean watch;

  @Option(names = "--fix", description = "apply the known fixes to the files, then check again")
  private boolean fix;

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean help;

  Check(Console terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    return new CheckRun(terminal, Format.named(format), watch, fix, paths).run();
  }
}
