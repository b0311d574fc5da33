package rungbook.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import rungbook.cli.cache.CacheFolder;
import rungbook.report.Style;

/**
 * The environment of a run.
 *
 * @param style the style of the report: color only on a terminal
 * @param watched whether the error stream is a terminal, so that progress is shown
 * @param folder the folder that relative paths start from
 * @param home the program's folder, with its bundled library
 * @param cache the folder for what a later run may use; empty for a run that does without
 */
record Console(PrintWriter out, PrintWriter err, Style style, boolean watched, Path folder, Optional<Path> home,
    Optional<Path> cache) {

  /** Which streams are terminals, as the launcher passes it, since Java cannot tell: {@code out err}. */
  private static final String STREAMS = System.getProperty("rungbook.terminal", "");

  static Console ofProcess() {
    boolean color = STREAMS.contains("out") && !isSet("NO_COLOR") && !"dumb".equals(System.getenv("TERM"));
    return new Console(writer(FileDescriptor.out), writer(FileDescriptor.err), color ? Style.COLOR : Style.PLAIN,
        STREAMS.contains("err"), Path.of("").toAbsolutePath(),
        Optional.ofNullable(System.getProperty("rungbook.home")).map(Path::of),
        CacheFolder.place(name -> Optional.ofNullable(System.getenv(name)).orElse(""),
            System.getProperty("user.home", "")));
  }

  Console withoutCache() {
    return new Console(out, err, style, watched, folder, home, Optional.empty());
  }

  private static boolean isSet(String variable) {
    String value = System.getenv(variable);
    return value != null && !value.isEmpty();
  }

  /** Always UTF-8, like the files, except on a Windows console, which has its own charset. */
  private static PrintWriter writer(FileDescriptor stream) {
    java.io.Console console = System.getProperty("os.name").startsWith("Windows") ? System.console() : null;
    Charset charset = console != null ? console.charset() : StandardCharsets.UTF_8;
    return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), charset), false);
  }

  /** A path for display: relative if it is below the folder, with forward slashes. */
  String shown(Path path) {
    Path absolute = path.toAbsolutePath().normalize();
    Path from = folder.toAbsolutePath().normalize();
    Path shown = absolute.startsWith(from) && !absolute.equals(from) ? from.relativize(absolute) : absolute;
    return shown.toString().replace('\\', '/');
  }
}
