package rungbook.cli.cache;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Entries on disk, by key. What cannot be read, or is damaged, is not there; what cannot be written is left out.
 * Several processes may use one folder: an entry is written beside its place and then moved there.
 */
public final class CacheFolder {

  private static final long MOST_BYTES = 256L << 20;
  private static final String PART = ".part";

  private final Path folder;
  private final long mostBytes;

  /** @param mostBytes of all entries; beyond that, {@link #trim} drops those that were used longest ago */
  CacheFolder(Path folder, long mostBytes) {
    this.folder = folder;
    this.mostBytes = mostBytes;
  }

  public CacheFolder(Path folder) {
    this(folder, MOST_BYTES);
  }

  /**
   * {@code RUNGBOOK_CACHE}; else {@code rungbook} in the folder of the XDG Base Directory Specification 0.8:
   * {@code XDG_CACHE_HOME} where it is an absolute path, else {@code .cache} in the user's home.
   *
   * @param variable the value of an environment variable, empty where it is not set
   */
  public static Optional<Path> place(UnaryOperator<String> variable, String home) {
    String own = variable.apply("RUNGBOOK_CACHE");
    if (!own.isEmpty()) {
      return Optional.of(Path.of(own).toAbsolutePath());
    }
    String caches = variable.apply("XDG_CACHE_HOME");
    if (caches.startsWith("/")) {
      return Optional.of(Path.of(caches, "rungbook"));
    }
    return home.isEmpty() ? Optional.empty() : Optional.of(Path.of(home, ".cache", "rungbook").toAbsolutePath());
  }

  /** The content of an entry. */
  public Optional<byte[]> load(String key) {
    Path file = folder.resolve(key);
    try {
      Optional<byte[]> content = Envelope.open(key, Files.readAllBytes(file));
      if (content.isPresent()) {
        touch(file);
      }
      return content;
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** So that it counts as used now; a folder that cannot be written to does without. */
  private static void touch(Path file) {
    try {
      Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
    } catch (IOException e) {
      // it is dropped earlier then
    }
  }

  public void save(String key, byte[] content) {
    try {
      Files.createDirectories(folder);
      Path part = Files.createTempFile(folder, key, PART);
      try {
        Files.write(part, Envelope.around(key, content));
        Files.move(part, folder.resolve(key), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException e) {
      // it is computed again the next time
    }
  }

  private record Entry(Path file, long bytes, FileTime used) {}

  /** Drops the entries that were used longest ago until the rest is small enough. */
  public void trim() {
    try (Stream<Path> files = Files.list(folder)) {
      List<Entry> entries = files.flatMap(file -> entry(file).stream())
          .sorted(Comparator.comparing(Entry::used).reversed()).toList();
      long sum = 0;
      for (Entry entry : entries) {
        sum += entry.bytes();
        if (sum > mostBytes) {
          Files.deleteIfExists(entry.file());
        }
      }
    } catch (IOException e) {
      // the next run tries again
    }
  }

  /** Empty for what another process has dropped meanwhile. */
  private static Optional<Entry> entry(Path file) {
    try {
      return Optional.of(new Entry(file, Files.size(file), Files.getLastModifiedTime(file)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
