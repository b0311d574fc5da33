package rungbook.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import rungbook.library.solving.FactsFinder;
import rungbook.source.Source;
import rungbook.tree.Shared;
import rungbook.tree.Tree;

/** The library that comes with the program, read and compiled once for all tests. */
public final class StarterLibrary {

  public static final Library LIBRARY = compiled();

  public static final LibraryText TEXT = LIBRARY.text();

  /** Its trees, as a proof asks for those that a tree leads to. */
  static final Function<String, Optional<Tree>> TREES = id -> LIBRARY.tree(id).map(CompiledTree::tree);

  /** Its circuits are solved once for all tests. */
  public static final FactsFinder FACTS = new FactsFinder();

  private static final String WORDS = "shared/words.md";

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

  /**
   * A library before its trees are compiled. Reads only the shared texts that differ from those here, which have no
   * problem; a list of words is held against all of them.
   */
  static Library readShared(LibraryText text) {
    SortedMap<String, Source> known = sharedTexts(TEXT);
    if (!text.unreadable().isEmpty() || !text.texts().keySet().containsAll(known.keySet())
        || !known.get(WORDS).equals(text.texts().get(WORDS))) {
      return LibraryCompiler.readShared(text);
    }
    var others = new TreeMap<>(text.texts());
    others.entrySet().removeIf(one -> !one.getKey().equals(WORDS) && one.getValue().equals(known.get(one.getKey())));
    Library read = LibraryCompiler.readShared(new LibraryText(others, text.pictures(), List.of()));
    return new Library(text, joined(LIBRARY.shared(), read.shared()), read.words(), List.of(), read.ofShared(),
        Map.of());
  }

  static SortedMap<String, Source> sharedTexts(LibraryText text) {
    return text.texts().subMap("shared/", "shared0");
  }

  private static Shared joined(Shared known, Shared read) {
    return new Shared(joined(known.systems(), read.systems()), joined(known.circuits(), read.circuits()),
        joined(known.meters(), read.meters()), joined(known.cautions(), read.cautions()),
        joined(known.qualifications(), read.qualifications()), joined(known.fragments(), read.fragments()),
        read.trees());
  }

  private static <T> Map<String, T> joined(Map<String, T> known, Map<String, T> read) {
    var all = new HashMap<>(known);
    all.putAll(read);
    return all;
  }

  private static Library compiled() {
    try {
      return LibraryCompiler.compile(Folder.read(Path.of("")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
