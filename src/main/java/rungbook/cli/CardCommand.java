package rungbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungbook.library.LibraryCompiler;
import rungbook.library.LibraryText;
import rungbook.library.card.CardPages;
import rungbook.pack.PackFile;
import rungbook.pack.page.FileNames;

@Command(name = "card", description = "Make a system's pocket card: a page to print and fold",
    footer = {"", "exit code: 0 written, 1 the system has no circuit, 2 misuse"})
final class CardCommand implements Callable<Integer> {

  private final Console terminal;

  @Parameters(paramLabel = "SYSTEM", description = "a system's file, or its name in the library of this folder")
  private String system;

  @Option(names = "--to", paramLabel = "FILE", description = "the page (default: card-SYSTEM.html)")
  private Optional<String> to = Optional.empty();

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean help;

  CardCommand(Console terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    InputFiles.InLibrary named = InputFiles.system(system, terminal);
    LibraryText text = named.library();
    if (!text.in("shared/systems/").containsKey(named.id())) {
      throw new UsageError("there is no system `" + named.id() + "`", "name a file of `shared/systems`");
    }
    Optional<PackFile> card = CardPages.of(named.id(), LibraryCompiler.compile(text));
    if (card.isEmpty()) {
      terminal.err().println("rungbook: the circuit of `" + named.id() + "` cannot be solved");
      return 1;
    }
    write(card.get());
    return 0;
  }

  private void write(PackFile card) throws IOException {
    Path file = to.map(written -> InputFiles.newFile(written, terminal))
        .orElseGet(() -> terminal.folder().resolve(card.name()));
    if (!file.toString().endsWith(FileNames.ENDING)) {
      throw new UsageError("`" + file.getFileName() + "` is not the name of a page",
          "end it in `" + FileNames.ENDING + "`, so that a browser opens it");
    }
    PackCommand.replace(file, card.bytes());
    terminal.out().println(terminal.shown(file));
  }
}
