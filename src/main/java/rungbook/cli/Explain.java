package rungbook.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungbook.report.RulePage;
import rungbook.source.Codes;
import rungbook.source.Nearest;
import rungbook.source.Wording;

@Command(name = "explain", description = "Print the page of a problem: what it means, an example, how to fix it")
final class Explain implements Callable<Integer> {

  private final Console terminal;

  @Parameters(paramLabel = "CODE", description = "the word after `error` or `warning` in a report")
  private String code;

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean help;

  Explain(Console terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Wording wording = Wording.find(code).orElseThrow(() -> new UsageError("no problem is called `" + code + "`",
        Nearest.to(code, Codes.all()).map(near -> "write `" + near + "`")
            .orElse("write the code as the report shows it")));
    terminal.out().print(RulePage.of(wording, terminal.style()));
    return 0;
  }
}
