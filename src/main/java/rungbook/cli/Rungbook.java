package rungbook.cli;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine;

/** The top-level command. */
@Command(name = "rungbook", versionProvider = Rungbook.Version.class, synopsisSubcommandLabel = "COMMAND",
    description = "Diagnostic trees for heating and cooling controls: write, check, prove and pack them.",
    footer = {"", "exit code: 0 clean, 1 problems, 2 misuse"})
final class Rungbook implements Runnable {

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean help;

  @Option(names = "--version", versionHelp = true, description = "Show the version")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean version;

  @Spec
  private CommandSpec spec;

  @Override
  public void run() {
    throw new UsageError("no command given", "write one of " + String.join(", ", spec.subcommands().keySet()));
  }

  /** Reads the version from the packaged program; a program run from classes has none. */
  static final class Version implements CommandLine.IVersionProvider {

    @Override
    public String[] getVersion() {
      return new String[] {"rungbook " + text()};
    }

    static String text() {
      return Optional.ofNullable(Rungbook.class.getPackage().getImplementationVersion()).orElse("unpackaged");
    }
  }
}
