package rungbook.cli.watch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Watches by polling. */
final class PolledWatching implements Watching {

  private static final long EVERY_MILLIS = 1000;

  private final Collection<Path> folders;
  private final Map<Path, String> before;

  PolledWatching(Collection<Path> folders) throws IOException {
    this.folders = folders;
    this.before = states();
  }

  @Override
  public void await() throws InterruptedException {
    try {
      while (states().equals(before)) {
        Thread.sleep(EVERY_MILLIS);
      }
      Thread.sleep(SETTLE_MILLIS);
    } catch (IOException e) {
      Thread.sleep(EVERY_MILLIS); // a folder has gone: the next check says so
    }
  }

  /** The time and size of each file. */
  private Map<Path, String> states() throws IOException {
    var states = new TreeMap<Path, String>();
    for (Path folder : folders) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.filter(Watching::counts).toList()) {
          states.put(file, file.toFile().lastModified() + " " + file.toFile().length());
        }
      }
    }
    return states;
  }

  @Override
  public void close() {
    // holds nothing open
  }
}
