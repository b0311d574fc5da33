package rungbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungbook.pack.Verify;

@Command(name = "verify", description = "Say whether packs are as they were written",
    footer = {"", "Tells damage and changes, not who wrote a pack.", "exit code: 0 all intact, 1 not all, 2 misuse"})
final class VerifyCommand implements Callable<Integer> {

  /** No pack is larger, in bytes: a tree of 4 MB with its pictures stays well below. */
  private static final long LARGEST = 512L * 1024 * 1024;

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", arity = "1..*", description = "a pack")
  private List<String> files;

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  private boolean help;

  VerifyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    boolean intact = true;
    for (String written : files) {
      Path file = Asked.path(written, terminal);
      if (Files.isDirectory(file)) {
        throw new Misuse("`" + written + "` is a folder", "name the packs in it: `" + written.replaceAll("/$", "") + "/*.html`");
      }
      intact &= verify(file);
    }
    return intact ? 0 : 1;
  }

  private boolean verify(Path file) throws IOException {
    Verify.Verdict verdict = Files.size(file) > LARGEST ? new Verify.Verdict.NotAPack() : Verify.of(Files.readAllBytes(file));
    terminal.out().println(terminal.shown(file) + ": " + words(verdict));
    return verdict instanceof Verify.Verdict.Intact;
  }

  private static String words(Verify.Verdict verdict) {
    if (verdict instanceof Verify.Verdict.Intact intact) {
      return "intact, digest " + intact.digest();
    }
    return verdict instanceof Verify.Verdict.Altered altered
        ? "altered, it says it is " + altered.claimed() + " and its bytes give " + altered.found() : "not a pack";
  }
}
