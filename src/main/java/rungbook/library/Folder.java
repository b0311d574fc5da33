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
import rungbook.source.Decoding;
import rungbook.source.Problem;
import rungbook.source.Source;
import rungbook.source.Span;

/** Reads a library from a folder: {@code trees/} and {@code shared/} below it. Links that lead out of the folder are not followed. */
public final class Folder {

  private final Path root;
  private final Map<String, Source> texts = new TreeMap<>();
  private final Map<String, byte[]> pictures = new TreeMap<>();
  private final List<Problem> unreadable = new ArrayList<>();

  private Folder(Path root) {
    this.root = root;
  }

  /** @param root the library's folder. @throws IOException if it cannot be listed; a single file that cannot be read is a problem */
  public static LibraryText read(Path root) throws IOException {
    Folder folder = new Folder(root.toRealPath());
    for (String part : List.of("trees", "shared")) {
      folder.readBelow(part);
    }
    return new LibraryText(new TreeMap<>(folder.texts), new TreeMap<>(folder.pictures), folder.unreadable);
  }

  /** The library that a file or folder belongs to: the nearest folder around it that holds {@code trees/} or {@code shared/}. */
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
    try {
      if (!name.endsWith(".md")) {
        pictures.put(name, size > Pictures.LARGEST ? beginning(file) : Files.readAllBytes(file));
      } else if (size > Decoding.MOST_BYTES) {
        unreadable.add(Decoding.tooLarge(name, size));
      } else {
        Decoding.Decoded decoded = Decoding.decode(name, Files.readAllBytes(file));
        decoded.problem().ifPresentOrElse(unreadable::add, () -> texts.put(name, decoded.source()));
      }
    } catch (IOException e) {
      unreadable.add(unreadable(name, e));
    }
  }

  /** Enough of a file to see that it is too large. */
  private static byte[] beginning(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return in.readNBytes(Pictures.LARGEST + 1);
    }
  }

  private static Problem unreadable(String name, IOException e) {
    return Problem.at("file-unreadable", new Source(name, ""), Span.at(0)).with("why", e.getClass().getSimpleName());
  }

  private String name(Path file) {
    return root.relativize(file).toString().replace('\\', '/');
  }
}
