package rungbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungbook.pack.Verify;
import rungbook.pack.signature.PublicSigningKey;
import rungbook.pack.signature.SigningKey;
import rungbook.report.Columns;

@Command(name = "verify", description = "Say whether packs are unchanged, and which ones they are",
    footer = {"",
        "Without --key it detects damage and changes, not who wrote a pack: compare the printed digest with the one "
            + "on the server. With --key, FILE.sig must be a signature of FILE by that key.",
        "exit code: 0 all intact (and signed by the key), 1 not all, 2 misuse"})
final class VerifyCommand implements Callable<Integer> {

  /** A larger pack would not open on a phone. */
  private static final int MOST_MEGABYTES = 100;

  private static final int MOST_BYTES = MOST_MEGABYTES * 1024 * 1024;

  private final Console terminal;

  @Parameters(paramLabel = "FILE", arity = "1..*", description = "a pack")
  private List<String> files;

  @Option(names = "--key", paramLabel = "KEY",
      description = "the company's .pub file: each pack must be signed by it, in FILE.sig")
  private Optional<String> key = Optional.empty();

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean help;

  VerifyCommand(Console terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Optional<PublicSigningKey> signer = key.isPresent() ? Optional.of(KeyFiles.checking(key.get(), terminal))
        : Optional.empty();
    boolean intact = true;
    for (String written : files) {
      Path file = InputFiles.path(written, terminal);
      if (Files.isDirectory(file)) {
        throw new UsageError("`" + written + "` is a folder",
            "name the packs in it: `" + written.replaceAll("/$", "") + "/*.html`");
      }
      intact &= verify(file, signer);
    }
    return intact ? 0 : 1;
  }

  private boolean verify(Path file, Optional<PublicSigningKey> signer) throws IOException {
    String unfit = unfit(file);
    if (!unfit.isEmpty()) {
      terminal.out().println(terminal.shown(file) + ": " + words(new Verify.Verdict.NotAPack()) + unfit);
      return false;
    }
    byte[] pack = bytes(file);
    Verify.Verdict verdict = Verify.of(pack);
    terminal.out().println(terminal.shown(file) + ": " + words(verdict));
    boolean signed = signer.isEmpty() || isSigned(file, pack, signer.get());
    return signed && verdict instanceof Verify.Verdict.Intact;
  }

  private boolean isSigned(Path file, byte[] pack, PublicSigningKey signer) throws IOException {
    Path beside = file.resolveSibling(file.getFileName() + SigningKey.ENDING);
    boolean found = Files.isRegularFile(beside);
    boolean signed = found && signer.verifies(pack, bytes(beside));
    String says = signed ? "by the key " + signer.fingerprint()
        : found ? "not by this key, or of another file" : "none; there is no " + terminal.shown(beside);
    terminal.out().println("  signature: " + Columns.printable(says));
    return signed;
  }

  /** Why a file is not read; empty if it can be. */
  private static String unfit(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return ", it is not a regular file"; // a pipe or a device may never end
    }
    return Files.size(file) > MOST_BYTES ? ", it is larger than " + MOST_MEGABYTES + " MB" : "";
  }

  private static byte[] bytes(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(MOST_BYTES); // it may have grown
    }
  }

  private static String words(Verify.Verdict verdict) {
    if (verdict instanceof Verify.Verdict.Intact intact) {
      return words(intact);
    }
    return verdict instanceof Verify.Verdict.Altered altered ? "altered: " + altered.flaw().says() : "not a pack";
  }

  private static String words(Verify.Verdict.Intact intact) {
    StringBuilder words = new StringBuilder("intact");
    line(words, "digest", intact.shortDigest());
    line(words, "file", intact.file());
    line(words, "title", intact.title());
    intact.cells().forEach((name, cell) -> line(words, name.toLowerCase(Locale.ROOT), cell));
    return words.toString();
  }

  private static void line(StringBuilder words, String name, String value) {
    words.append("\n  ").append(Columns.printable(name)).append(": ").append(Columns.printable(value));
  }
}
