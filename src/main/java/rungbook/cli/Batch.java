package rungbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungbook.library.Folder;
import rungbook.library.LibraryText;
import rungbook.library.LooseFolder;
import rungbook.library.earlier.EarlierTrees;
import rungbook.source.Decoding;
import rungbook.source.Wording;

/**
 * Files that are checked together because they use the same library: their own, or for loose trees the library whose
 * shared texts they may use.
 *
 * @param library the library with the shared texts; empty if there is none in any parent folder
 * @param loose the folder of the trees, if they are not in the library
 * @param files absolute paths
 */
record Batch(Optional<Path> library, Optional<Path> loose, SortedSet<Path> files) {

  private static final LibraryText NOTHING = new LibraryText(new TreeMap<>(), new TreeMap<>(), List.of());

  /**
   * Groups files by their library.
   *
   * @param home the program's folder
   */
  static Collection<Batch> of(Collection<Path> files, Optional<Path> home) {
    var batches = new LinkedHashMap<List<Optional<Path>>, Batch>();
    for (Path file : files) {
      Optional<Path> library = libraryAround(file);
      Optional<Path> loose = library.filter(root -> isMember(file, root)).isPresent() ? Optional.empty()
          : Optional.ofNullable(file.getParent());
      batches
          .computeIfAbsent(List.of(library, loose), around -> new Batch(library.or(() -> home), loose, new TreeSet<>()))
          .files().add(file);
    }
    return batches.values();
  }

  private static boolean isMember(Path file, Path library) {
    return library.resolve("trees").equals(file.getParent()) || file.startsWith(library.resolve("shared"));
  }

  /** Whether a file is a shared text, not a tree. */
  static boolean isShared(Path file) {
    return libraryAround(file).filter(root -> file.startsWith(root.resolve("shared"))).isPresent();
  }

  private static Optional<Path> libraryAround(Path file) {
    Optional<Path> root = Folder.rootOf(file);
    while (root.isPresent() && !isLibrary(root.get())) {
      root = Optional.ofNullable(root.get().getParent()).flatMap(Folder::rootOf);
    }
    return root;
  }

  /**
   * Whether a folder is a library: {@code shared} alone is a common name, so it must contain a folder of shared texts.
   */
  static boolean isLibrary(Path folder) {
    return Files.isDirectory(folder.resolve("trees"))
        || Stream.of("systems", "cautions", "qualifications", "meters", "fragments")
            .anyMatch(part -> Files.isDirectory(folder.resolve("shared").resolve(part)));
  }

  /** All folders where a save can change the result of a check. */
  static SortedSet<Path> folders(Collection<Path> files, Optional<Path> home) throws IOException {
    var folders = new TreeSet<Path>();
    for (Batch batch : of(files, home)) {
      batch.loose.ifPresent(folders::add);
      for (String part : List.of("trees", "shared")) {
        Optional<Path> start = batch.library.map(root -> root.resolve(part)).filter(Files::isDirectory);
        if (start.isPresent()) {
          try (Stream<Path> below = Files.walk(start.get())) {
            below.filter(Files::isDirectory).forEach(folders::add);
          }
        }
      }
    }
    return folders;
  }

  /**
   * Whether a text of the library is one of the files.
   *
   * @param name the text's path in the library
   */
  boolean asks(String name) {
    return files.contains(fileOf(name));
  }

  LibraryText read() throws IOException {
    LibraryText text = library.isPresent() ? Folder.read(library.get()) : NOTHING;
    return loose.isPresent() ? LooseFolder.read(loose.get(), text) : text;
  }

  /**
   * What these files were.
   *
   * @param path an earlier text of the only file; or a folder: a copy of the library, or of its trees alone, which then
   * use what this library shares
   */
  EarlierTrees earlier(Path path) throws IOException {
    if (!Files.isDirectory(path)) {
      return EarlierTrees.of(read(), nameOf(files.first()), text(path));
    }
    Path around = path.endsWith("trees") ? path.getParent() : path;
    return EarlierTrees.of(around != null && isLibrary(around) ? Folder.read(around) : LooseFolder.read(path, read()));
  }

  private static String text(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      Decoding.Decoded text = Decoding.decode(file.toString(), in.readNBytes(Decoding.MOST_BYTES + 1));
      if (text.problem().isPresent()) {
        Wording wording = Wording.of(text.problem().get());
        throw new UsageError("`" + file + "`: " + wording.sentence(text.problem().get()),
            wording.hint(text.problem().get()));
      }
      return text.source().text();
    }
  }

  /** The file of a text, from its path in the library. */
  Path fileOf(String name) {
    return loose.filter(folder -> name.startsWith("trees/"))
        .map(folder -> folder.resolve(name.substring("trees/".length())))
        .orElseGet(() -> library.orElseThrow().resolve(name));
  }

  /** A file's path in the library, the inverse of {@link #fileOf}. */
  String nameOf(Path file) {
    return loose.map(folder -> "trees/" + folder.relativize(file))
        .orElseGet(() -> library.orElseThrow().relativize(file).toString()).replace('\\', '/');
  }
}
