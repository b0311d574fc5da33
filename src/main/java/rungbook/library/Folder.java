package rungbook.library;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungbook.source.Code;
import rungbook.source.Decoding;
import rungbook.source.PictureKind;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/**
 * Reads a library from a folder: {@code trees/} and {@code shared/} below it. Does not follow symbolic links out of the
 * folder.
 */
public final class Folder {

  static final Code FILE_UNREADABLE = Code.of("file-unreadable");

  private final Path root;
  private final Map<String, Source> texts = new TreeMap<>();
  private final Map<String, byte[]> pictures = new TreeMap<>();
  private final List<Problem> unreadable = new ArrayList<>();

  private Folder(Path root) {
    this.root = root;
  }

  /**
   * @param root the library's folder.
   * @throws IOException if the folder cannot be listed; a single unreadable file is a problem instead
   */
  public static LibraryText read(Path root) throws IOException {
    Folder folder = new Folder(root.toRealPath());
    for (String part : List.of("trees", "shared")) {
      folder.readBelow(part);
    }
    return new LibraryText(new TreeMap<>(folder.texts), new TreeMap<>(folder.pictures), folder.unreadable);
  }

  /** The library of a file or folder: the nearest folder around it that contains {@code trees/} or {@code shared/}. */
  public static Optional<Path> rootOf(Path start) {
    for (Path at = start.toAbsolutePath().normalize(); at != null; at = at.getParent()) {
      if (Files.isDirectory(at.resolve("trees")) || Files.isDirectory(at.resolve("shared"))) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }

  private void readBelow(String part) throws IOException {
    Path start = root.resolve(part);
    if (Files.isDirectory(start)) {
      Files.walkFileTree(start, new SimpleFileVisitor<>() {
        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
          if (attributes.isRegularFile()) {
            readFile(file, attributes.size());
          }
          return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException e) {
          unreadable.add(unreadable(name(file), e));
          return FileVisitResult.CONTINUE;
        }
      });
    }
  }

  private void readFile(Path file, long size) {
    String name = name(file);
    if (name.endsWith(".md")) {
      Decoding.Decoded decoded = readText(name, file, size);
      decoded.problem().ifPresentOrElse(unreadable::add, () -> texts.put(name, decoded.source()));
      return;
    }
    try {
      pictures.put(name, beginning(file));
    } catch (IOException e) {
      unreadable.add(unreadable(name, e));
    }
  }

  /**
   * Reads a text, named by its path in the library; a problem says why it could not be read.
   *
   * @param size in bytes
   */
  static Decoding.Decoded readText(String name, Path file, long size) {
    try {
      return size > Decoding.MOST_BYTES ? refused(Decoding.tooLarge(name, size))
          : Decoding.decode(name, Files.readAllBytes(file));
    } catch (IOException e) {
      return refused(unreadable(name, e));
    }
  }

  private static Decoding.Decoded refused(Problem problem) {
    return new Decoding.Decoded(problem.source(), Optional.of(problem));
  }

  /** A picture's bytes, one more than the limit at most. */
  static byte[] beginning(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return in.readNBytes(PictureKind.MOST_BYTES + 1);
    }
  }

  private static Problem unreadable(String name, IOException e) {
    return unreadable(name, e.getClass().getSimpleName());
  }

  /** The problem of a file that exists but cannot be read. */
  public static Problem unreadable(String name, String why) {
    return Problem.at(FILE_UNREADABLE, new Source(name, ""), Span.at(0)).with("why", why);
  }

  private String name(Path file) {
    return root.relativize(file).toString().replace('\\', '/');
  }
}
