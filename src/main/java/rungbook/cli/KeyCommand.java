package rungbook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungbook.pack.signature.SigningKey;

@Command(name = "key", description = "Make a key with which a company signs its packs",
    footer = {"", "Writes NAME.key, which signs, and NAME.pub, which checks. Existing files are kept.",
        "Keep NAME.key where only the people who release packs can read it; give NAME.pub to everybody."})
final class KeyCommand implements Callable<Integer> {

  private static final String PRIVATE_ENDING = ".key";
  private static final String PUBLIC_ENDING = ".pub";

  private final Console terminal;

  @Parameters(paramLabel = "NAME", description = "the files' name without its ending")
  private Path name;

  @Option(names = {"-h", "--help"}, usageHelp = true, description = "show this help")
  @SuppressWarnings("unused") // the command line parser acts on it
  private boolean help;

  KeyCommand(Console terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Path privateFile = free(PRIVATE_ENDING);
    Path publicFile = free(PUBLIC_ENDING);
    SigningKey key = SigningKey.random();
    write(privateFile, key.written(), ownersOnly(privateFile));
    write(publicFile, key.publicKey().written());
    terminal.out().println(terminal.shown(privateFile) + " signs: keep it secret, and keep a copy in a safe place");
    terminal.out().println(terminal.shown(publicFile) + " checks: give it to everybody");
    terminal.out().println("fingerprint: " + key.publicKey().fingerprint());
    return 0;
  }

  /** A lost key cannot be made again, so none is ever replaced. */
  private Path free(String ending) {
    Path file = terminal.folder().resolve(name + ending);
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new UsageError("there is no folder for `" + terminal.shown(file) + "`", "make the folder first");
    }
    if (Files.exists(file)) {
      throw new UsageError("`" + terminal.shown(file) + "` exists, and a key is never replaced",
          "choose another name, or move the file");
    }
    return file;
  }

  private static FileAttribute<?>[] ownersOnly(Path file) {
    boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
    return posix
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))}
        : new FileAttribute<?>[0];
  }

  private static void write(Path file, String text, FileAttribute<?>... attributes) throws IOException {
    try (var out = Files.newByteChannel(file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
        attributes)) {
      out.write(StandardCharsets.US_ASCII.encode(text));
    }
  }
}
