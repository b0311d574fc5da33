package rungbook.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import picocli.CommandLine;
import rungbook.source.Nearest;

/** Reports errors in the command line, with the nearest name. */
final class UsageErrorHandler
    implements CommandLine.IParameterExceptionHandler, CommandLine.IExecutionExceptionHandler {

  private final Console terminal;

  UsageErrorHandler(Console terminal) {
    this.terminal = terminal;
  }

  @Override
  public int handleParseException(ParameterException e, String[] arguments) {
    return error(e).tell(terminal);
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine line, CommandLine.ParseResult parsed) throws Exception {
    if (e instanceof UsageError error) {
      return error.tell(terminal);
    }
    if (e instanceof IOException failed) {
      return UsageError.of(failed).tell(terminal);
    }
    throw e;
  }

  private static UsageError error(ParameterException e) {
    return e.getCause() instanceof UsageError error ? error
        : e instanceof UnmatchedArgumentException unmatched ? unmatched(unmatched)
            : e instanceof MissingParameterException missing ? missing(missing)
                : new UsageError(String.valueOf(e.getMessage()), usage(e.getCommandLine()));
  }

  private static UsageError unmatched(UnmatchedArgumentException e) {
    String written = e.getUnmatched().get(0);
    CommandLine line = e.getCommandLine();
    boolean option = written.startsWith("-");
    String kind = option ? "option" : line.getSubcommands().isEmpty() ? "argument" : "command";
    Optional<String> near = Nearest.to(written, option ? options(line) : List.copyOf(line.getSubcommands().keySet()));
    return new UsageError("unknown " + kind + " `" + written + "`",
        near.map(name -> "write `" + name + "`").orElse(usage(line)));
  }

  private static UsageError missing(MissingParameterException e) {
    return new UsageError("`" + e.getCommandLine().getCommandName() + "` needs " + e.getMissing().get(0).paramLabel(),
        usage(e.getCommandLine()));
  }

  private static List<String> options(CommandLine line) {
    return line.getCommandSpec().options().stream().flatMap(option -> Stream.of(option.names())).toList();
  }

  private static String usage(CommandLine line) {
    return "see `" + line.getCommandSpec().qualifiedName() + " --help`";
  }
}
