package rungbook.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
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
    commands(terminal, arguments).forEach((name, command) -> line.addSubcommand(command.get()));
    Misuses misuses = new Misuses(terminal);
    return line.setOut(terminal.out()).setErr(terminal.err()).setUsageHelpWidth(100)
        .setParameterExceptionHandler(misuses).setExecutionExceptionHandler(misuses)
        .execute(arguments);
  }

  /** The command that is asked for, or all of them to choose from: each costs time to set up. */
  private static Map<String, Supplier<Object>> commands(Terminal terminal, String... arguments) {
    var all = new LinkedHashMap<String, Supplier<Object>>();
    all.put("check", () -> new Check(terminal));
    all.put("explain", () -> new Explain(terminal));
    all.put("serve", () -> new Serve(terminal));
    return arguments.length > 0 && all.containsKey(arguments[0]) ? Map.of(arguments[0], all.get(arguments[0])) : all;
  }
}
