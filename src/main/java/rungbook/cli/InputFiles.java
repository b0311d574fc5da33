package rungbook.cli;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungbook.library.Folder;
import rungbook.library.LibraryText;
import rungbook.source.Nearest;

/** Resolves the paths and names of a command line to Markdown files: files as they are, folders recursively. */
final class InputFiles {

  private static final String ENDING = ".md";

  private final Console terminal;
  private final SortedSet<Path> files = new TreeSet<>();

  private InputFiles(Console terminal) {
    this.terminal = terminal;
  }

  /**
   * @return absolute paths
   * @throws UsageError if a path does not exist, or has nothing to check
   */
  static SortedSet<Path> files(List<String> paths, Console terminal) throws IOException {
    InputFiles requested = new InputFiles(terminal);
    for (String path : paths) {
      requested.take(path);
    }
    return requested.files;
  }

  private void take(String written) throws IOException {
    Path path = path(written, terminal);
    int before = files.size();
    if (Files.isDirectory(path)) {
      takeFolder(path);
      if (files.size() == before && files.stream().noneMatch(file -> file.startsWith(path))) {
        throw new UsageError("`" + written + "` has no Markdown files",
            "name a folder of trees, or a file that ends in `.md`");
      }
    } else if (!written.endsWith(".md")) {
      throw new UsageError("`" + written + "` is not a Markdown file",
          "name a file that ends in `.md`, or a folder of them");
    } else {
      files.add(path);
    }
  }

  /**
   * The absolute path of an existing file or folder.
   *
   * @throws UsageError if it does not exist, with the nearest name
   */
  static Path path(String written, Console terminal) throws IOException {
    try {
      Path path = terminal.folder().resolve(written).toAbsolutePath().normalize();
      if (Files.exists(path)) {
        return path;
      }
      throw new UsageError("there is no `" + written + "`", nearest(path, terminal));
    } catch (InvalidPathException e) {
      throw new UsageError("`" + written + "` cannot be a path", "name a file or a folder");
    }
  }

  /**
   * The absolute path of a file to be written.
   *
   * @throws UsageError if there can be no such file, or a folder has its name
   */
  static Path newFile(String written, Console terminal) {
    try {
      Path path = terminal.folder().resolve(written).toAbsolutePath().normalize();
      if (!Files.isDirectory(path)) {
        return path;
      }
      throw new UsageError("`" + written + "` is a folder", "name a file to write");
    } catch (InvalidPathException e) {
      throw new UsageError("`" + written + "` cannot be a path", "name a file to write");
    }
  }

  /** @param library the one that has it */
  record InLibrary(String id, LibraryText library) {}

  /** @param written a system's file, or its name in the library of this folder */
  static InLibrary system(String written, Console terminal) throws IOException {
    boolean isFile = written.endsWith(ENDING);
    String name = isFile ? written.substring(0, written.length() - ENDING.length()).replace('\\', '/') : written;
    Optional<Path> root = Folder.rootOf(isFile ? path(written, terminal) : terminal.folder()).or(terminal::home);
    LibraryText library = Folder.read(root.orElseThrow(() -> new UsageError("there is no library around this folder",
        "run it in a library's folder, or name a system's file")));
    return new InLibrary(name.substring(name.lastIndexOf('/') + 1), library);
  }

  private static String nearest(Path missing, Console terminal) throws IOException {
    Path folder = missing.getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      return "look for the folder first: `" + (folder == null ? missing : terminal.shown(folder)) + "` is not there";
    }
    try (Stream<Path> names = Files.list(folder)) {
      return Nearest.to(missing.getFileName().toString(), names.map(path -> path.getFileName().toString()).toList())
          .map(name -> "write `" + terminal.shown(folder.resolve(name)) + "`")
          .orElse("name an existing file or folder");
    }
  }

  private void takeFolder(Path folder) throws IOException {
    Files.walkFileTree(folder, new SimpleFileVisitor<>() {
      @Override
      public FileVisitResult preVisitDirectory(Path at, BasicFileAttributes attributes) throws IOException {
        if (!at.equals(folder) && at.getFileName().toString().startsWith(".")) {
          return FileVisitResult.SKIP_SUBTREE;
        }
        if (Batch.isLibrary(at)) {
          takeLibrary(at);
          return FileVisitResult.SKIP_SUBTREE;
        }
        return FileVisitResult.CONTINUE;
      }

      @Override
      public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
        if (file.toString().endsWith(".md")) {
          files.add(file);
        }
        return FileVisitResult.CONTINUE;
      }

      @Override
      public FileVisitResult visitFileFailed(Path file, IOException e) {
        files.add(file); // reported as unreadable with the rest
        return FileVisitResult.CONTINUE;
      }
    });
  }

  /** A library's texts are in two folders; a README or notes next to them do not belong to it. */
  private void takeLibrary(Path root) throws IOException {
    for (String part : List.of("trees", "shared")) {
      if (Files.isDirectory(root.resolve(part))) {
        takeFolder(root.resolve(part));
      }
    }
  }
}
