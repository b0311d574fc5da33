package rungbook.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import rungbook.source.Source;
import rungbook.tree.Tree;

/** The library that comes with the program, read and compiled once for all tests. */
public final class StarterLibrary {

  public static final Library LIBRARY = compiled();

  static final LibraryText TEXT = LIBRARY.text();

  /** Its trees, as a proof asks for those that a tree leads to. */
  static final Function<String, Optional<Tree>> TREES = id -> LIBRARY.tree(id).map(CompiledTree::tree);

  private StarterLibrary() {}

  public static Tree tree(String id) {
    return TREES.apply(id).orElseThrow();
  }

  /** The same texts with another text at a path. */
  static LibraryText with(String path, String text) {
    return with(path, new Source(path, text));
  }

  static LibraryText with(String path, Source source) {
    var texts = new TreeMap<>(TEXT.texts());
    texts.put(path, source);
    return new LibraryText(texts, TEXT.pictures(), TEXT.unreadable());
  }

  private static Library compiled() {
    try {
      return LibraryCompiler.compile(Folder.read(Path.of("")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
