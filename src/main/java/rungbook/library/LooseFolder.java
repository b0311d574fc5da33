package rungbook.library;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import rungbook.markdown.DocumentReader;
import rungbook.markdown.Picture;
import rungbook.source.Decoding;
import rungbook.source.Problem;
import rungbook.source.Source;

/**
 * Reads trees that are not in a library: the Markdown files of one folder, as if it were a library's {@code trees/}.
 * Reads only the pictures that they use, since such a folder may contain anything.
 */
public final class LooseFolder {

  private final Path folder;
  private final Map<String, Source> texts = new TreeMap<>();
  private final Map<String, byte[]> pictures = new TreeMap<>();
  private final List<Problem> unreadable = new ArrayList<>();

  private LooseFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * @param shared a library whose shared texts the trees may use
   * @throws IOException if the folder cannot be listed
   */
  public static LibraryText read(Path folder, LibraryText shared) throws IOException {
    LooseFolder loose = new LooseFolder(folder);
    loose.takeShared(shared);
    try (Stream<Path> files = Files.list(folder)) {
      files.filter(file -> file.toString().endsWith(".md")).filter(Files::isRegularFile).sorted()
          .forEach(loose::readTree);
    }
    return new LibraryText(new TreeMap<>(loose.texts), new TreeMap<>(loose.pictures), loose.unreadable);
  }

  private void takeShared(LibraryText shared) {
    shared.texts().forEach((name, source) -> {
      if (name.startsWith("shared/")) {
        texts.put(name, source);
      }
    });
    shared.pictures().forEach((name, bytes) -> {
      if (name.startsWith("shared/")) {
        pictures.put(name, bytes);
      }
    });
  }

  private void readTree(Path file) {
    String name = "trees/" + file.getFileName();
    Decoding.Decoded decoded = Folder.readText(name, file, file.toFile().length());
    decoded.problem().ifPresentOrElse(unreadable::add, () -> {
      texts.put(name, decoded.source());
      if (decoded.source().text().contains("![")) {
        DocumentReader.read(decoded.source()).pictures().forEach(picture -> readPicture(name, picture));
      }
    });
  }

  private void readPicture(String tree, Picture picture) {
    PictureLinks.path(tree, picture.target()).ifPresent(name -> {
      try {
        Path file = folder.resolve(name.substring("trees/".length())).toRealPath();
        if (file.startsWith(folder.toRealPath()) && Files.isRegularFile(file)) {
          pictures.put(name, Folder.beginning(file));
        }
      } catch (IOException | InvalidPathException e) {
        // stays unread: the compiler reports that the picture is not there
      }
    });
  }
}
