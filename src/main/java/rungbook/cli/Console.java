package rungbook.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import rungbook.report.Style;

/**
 * Where a run reads and writes.
 *
 * @param style how the report is dressed: in colour only where a person looks
 * @param watched whether a person watches the error stream, so that progress is worth showing
 * @param folder what relative paths are relative to
 * @param home the program's own folder, with the library it ships
 */
record Console(PrintWriter out, PrintWriter err, Style style, boolean watched, Path folder, Optional<Path> home) {

  /** The launcher looks which streams are terminals, since Java cannot tell them apart: {@code out err}. */
  private static final String STREAMS = System.getProperty("rungbook.terminal", "");

  static Console ofProcess() {
    boolean color = STREAMS.contains("out") && !isSet("NO_COLOR") && !"dumb".equals(System.getenv("TERM"));
    return new Console(writer(FileDescriptor.out), writer(FileDescriptor.err), color ? Style.COLOR : Style.PLAIN,
        STREAMS.contains("err"), Path.of("").toAbsolutePath(),
        Optional.ofNullable(System.getProperty("rungbook.home")).map(Path::of));
  }

  private static boolean isSet(String variable) {
    String value = System.getenv(variable);
    return value != null && !value.isEmpty();
  }

  /** Always UTF-8, as the files are; only a Windows console has a mind of its own. */
  private static PrintWriter writer(FileDescriptor stream) {
    boolean windows = System.getProperty("os.name").startsWith("Windows") && System.console() != null;
    Charset charset = windows ? System.console().charset() : StandardCharsets.UTF_8;
    return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), charset), false);
  }

  /** A path as people see it from here: relative where it lies below the folder, with forward slashes. */
  String shown(Path path) {
    Path absolute = path.toAbsolutePath().normalize();
    Path from = folder.toAbsolutePath().normalize();
    Path shown = absolute.startsWith(from) && !absolute.equals(from) ? from.relativize(absolute) : absolute;
    return shown.toString().replace('\\', '/');
  }
}
