package rungbook.cli;

import picocli.CommandLine;

/** Where the program starts. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    Terminal terminal = Terminal.ofProcess();
    int exit = run(terminal, arguments);
    terminal.out().flush();
    System.exit(exit);
  }

  /** Runs one command. @return 0 clean, 1 problems, 2 misuse */
  static int run(Terminal terminal, String... arguments) {
    CommandLine line = new CommandLine(new Rungbook());
    line.addSubcommand(new Check(terminal));
    line.addSubcommand(new Explain(terminal));
    line.addSubcommand(new Serve(terminal));
    return line.setOut(terminal.out()).setErr(terminal.err())
        .setParameterExceptionHandler(new Misuses(terminal))
        .setExecutionExceptionHandler(new Misuses(terminal))
        .setUsageHelpWidth(100)
        .execute(arguments);
  }
}
