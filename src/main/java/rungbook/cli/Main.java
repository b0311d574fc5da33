package rungbook.cli;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine;

/** The entry point of the program. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    Console terminal = Console.ofProcess();
    int exit = run(terminal, arguments);
    terminal.out().flush();
    System.exit(exit);
  }

  /**
   * Runs one command.
   *
   * @return the exit code: 0 clean, 1 problems, 2 usage error
   */
  static int run(Console terminal, String... arguments) {
    return isPlainCheck(arguments) ? check(terminal, List.of(arguments).subList(1, arguments.length))
        : parse(terminal, arguments);
  }

  /**
   * Whether this is {@code check} with paths only: by far the most frequent command, and the option parser would take a
   * fifth of its time.
   */
  private static boolean isPlainCheck(String... arguments) {
    return arguments.length > 1 && arguments[0].equals("check")
        && Stream.of(arguments).noneMatch(argument -> argument.startsWith("-"));
  }

  private static int check(Console terminal, List<String> paths) {
    try {
      return new CheckRun(terminal, Format.TEXT, false, false, paths).run();
    } catch (UsageError error) {
      return error.tell(terminal);
    } catch (IOException failed) {
      return UsageError.of(failed).tell(terminal);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped); // only watching waits
    }
  }

  private static int parse(Console terminal, String... arguments) {
    CommandLine line = new CommandLine(new Rungbook());
    commands(terminal, arguments).forEach((name, command) -> line.addSubcommand(command.get()));
    UsageErrorHandler errorHandler = new UsageErrorHandler(terminal);
    return line.setOut(terminal.out()).setErr(terminal.err()).setUsageHelpWidth(100).setExpandAtFiles(false)
        .setParameterExceptionHandler(errorHandler).setExecutionExceptionHandler(errorHandler)
        .execute(arguments);
  }

  /** Only the requested command if it exists, else all commands: each takes time to set up. */
  private static Map<String, Supplier<Object>> commands(Console terminal, String... arguments) {
    var all = new LinkedHashMap<String, Supplier<Object>>();
    all.put("check", () -> new Check(terminal));
    all.put("prove", () -> new Prove(terminal));
    all.put("read", () -> new ReadCommand(terminal));
    all.put("pack", () -> new PackCommand(terminal));
    all.put("card", () -> new CardCommand(terminal));
    all.put("verify", () -> new VerifyCommand(terminal));
    all.put("key", () -> new KeyCommand(terminal));
    all.put("explain", () -> new Explain(terminal));
    all.put("serve", () -> new Serve(terminal));
    return arguments.length > 0 && all.containsKey(arguments[0]) ? Map.of(arguments[0], all.get(arguments[0])) : all;
  }
}
