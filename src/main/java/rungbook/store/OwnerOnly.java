package rungbook.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * Files that their owner alone can read, where the file system knows owners (POSIX); elsewhere as the system makes
 * them.
 */
final class OwnerOnly {
  private OwnerOnly() {}

  static void createFolder(Path folder) throws IOException {
    Files.createDirectories(folder);
    apply(folder);
  }

  static void createFile(Path file) throws IOException {
    Files.createFile(file);
    apply(file);
  }

  static void apply(Path path) throws IOException {
    var view = Files.getFileAttributeView(path, PosixFileAttributeView.class);
    if (view != null) {
      view.setPermissions(PosixFilePermissions.fromString(Files.isDirectory(path) ? "rwx------" : "rw-------"));
    }
  }

  /**
   * A new file's name is on the disk only when its folder is; Windows does not open folders, and needs no such step.
   */
  static void forceFolder(Path folder) throws IOException {
    if (Files.getFileAttributeView(folder, PosixFileAttributeView.class) != null) {
      try (var channel = FileChannel.open(folder)) {
        channel.force(true);
      }
    }
  }

  /** What the file system said, in words. */
  static String why(IOException failed) {
    if (failed instanceof AccessDeniedException) {
      return "you may not write there";
    }
    if (failed instanceof FileAlreadyExistsException) {
      return "there is a file of that name";
    }
    return failed instanceof FileSystemException known && known.getReason() != null ? known.getReason()
        : String.valueOf(failed.getMessage());
  }
}
