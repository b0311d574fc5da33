package rungbook.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The file that the database has open. A program that has a file open goes on writing to it when somebody deletes it or
 * puts another in its place, and nobody finds again what it writes. So each save asks whether the file is still there.
 *
 * @param key the file system's name for the file itself, whatever its path (on POSIX, its device and inode); null where
 * it has none
 */
public record DatabaseFile(Path path, @Nullable Object key) {

  /** The file is deleted, or another is in its place. */
  public static final class Gone extends RuntimeException {
    Gone(Path path) {
      super("the library's file `" + path + "` was deleted, moved or replaced while the server runs");
    }
  }

  /** The file as it is now; nothing when the library is kept in no file of this folder. */
  static Optional<DatabaseFile> in(Path folder) throws IOException {
    var path = folder.resolve(DataFolder.DATABASE);
    return Files.exists(path) ? Optional.of(new DatabaseFile(path, key(path))) : Optional.empty();
  }

  private static @Nullable Object key(Path path) throws IOException {
    return Files.readAttributes(path, BasicFileAttributes.class).fileKey();
  }

  /** @throws Gone when it is not */
  void requireInPlace() {
    if (!isInPlace()) {
      throw new Gone(path);
    }
  }

  private boolean isInPlace() {
    try {
      var now = key(path);
      return key == null || key.equals(now);
    } catch (IOException goneOrUnreadable) {
      return false;
    }
  }
}
