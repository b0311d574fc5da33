package rungbook.cli.watch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import rungbook.source.PictureKind;

/** Watches folders for saves. Watches from its creation on, so no save is lost while a check runs. */
public interface Watching extends AutoCloseable {

  /** Editors save in several steps; a check waits for the last one. */
  long SETTLE_MILLIS = 150;

  /** Blocks until something is saved. */
  void await() throws InterruptedException;

  @Override
  void close() throws IOException;

  /** Watches by notification, or polls every second if that is not possible (a network drive, too many folders). */
  static Watching of(Collection<Path> folders) throws IOException {
    try {
      return NotifiedWatching.of(folders);
    } catch (IOException | UnsupportedOperationException e) {
      return new PolledWatching(folders);
    }
  }

  /** Whether a file is watched; editors' temporary files are not. */
  static boolean counts(Path file) {
    String name = file.getFileName().toString();
    return !name.startsWith(".") && (name.endsWith(".md") || PictureKind.of(name).isPresent());
  }
}
