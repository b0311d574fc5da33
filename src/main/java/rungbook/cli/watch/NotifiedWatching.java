package rungbook.cli.watch;

import static java.nio.file.StandardWatchEventKinds.ENTRY_CREATE;
import static java.nio.file.StandardWatchEventKinds.ENTRY_DELETE;
import static java.nio.file.StandardWatchEventKinds.ENTRY_MODIFY;
import static java.nio.file.StandardWatchEventKinds.OVERFLOW;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.Collection;

/** Watches with file system notifications. */
final class NotifiedWatching implements Watching {

  private final WatchService notices;

  private NotifiedWatching(WatchService notices) {
    this.notices = notices;
  }

  static NotifiedWatching of(Collection<Path> folders) throws IOException {
    WatchService notices = FileSystems.getDefault().newWatchService();
    try {
      for (Path folder : folders) {
        folder.register(notices, ENTRY_CREATE, ENTRY_DELETE, ENTRY_MODIFY);
      }
      return new NotifiedWatching(notices);
    } catch (IOException e) {
      notices.close();
      throw e;
    }
  }

  @Override
  public void await() throws InterruptedException {
    boolean saved = false;
    while (!saved) {
      WatchKey key = notices.take();
      saved = key.pollEvents().stream().anyMatch(NotifiedWatching::counts);
      key.reset();
    }
    Thread.sleep(SETTLE_MILLIS);
  }

  private static boolean counts(WatchEvent<?> event) {
    return event.kind() == OVERFLOW || Watching.counts((Path) event.context());
  }

  @Override
  public void close() throws IOException {
    notices.close();
  }
}
