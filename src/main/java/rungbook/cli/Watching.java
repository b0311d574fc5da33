package rungbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import rungbook.source.PictureKind;

/** Looks out for saves in some folders from the moment it is made, so that none is lost while a check runs. */
interface Watching extends AutoCloseable {

  /** Editors save in several moves; a check waits for the last. */
  long SETTLE_MILLIS = 150;

  /** Returns after something was saved. */
  void await() throws InterruptedException;

  @Override
  void close() throws IOException;

  /**
   * The system's own notices, or where it has none to give (a network drive, too many folders), a look every second.
   */
  static Watching of(Collection<Path> folders) throws IOException {
    try {
      return NotifiedWatching.of(folders);
    } catch (IOException | UnsupportedOperationException e) {
      return new PolledWatching(folders);
    }
  }

  /** Whether a file counts; editors' own scratch files do not. */
  static boolean counts(Path file) {
    String name = file.getFileName().toString();
    return !name.startsWith(".") && (name.endsWith(".md") || PictureKind.of(name).isPresent());
  }
}
