package rungbook.library;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import rungbook.library.lookup.Uses;
import rungbook.markdown.Document;
import rungbook.markdown.DocumentReader;
import rungbook.source.Source;
import rungbook.tree.Shared;
import rungbook.tree.Tree;
import rungbook.tree.reader.TreeReader;

/** The trees of a library, each read when it is first needed. Thread-safe. */
final class TreesAsRead {

  private final LibraryText text;
  private final Shared shared;
  private final Map<String, CompiledTree> compiled = new HashMap<>();
  private final Map<String, Document> documents = new ConcurrentHashMap<>();
  private final Map<String, Read> kept = new ConcurrentHashMap<>();

  /** @param compiled trees that were read before; used where nothing that they were read from has changed */
  TreesAsRead(LibraryText text, Shared shared, List<CompiledTree> compiled) {
    this.text = text;
    this.shared = shared;
    compiled.forEach(one -> this.compiled.put(one.tree().id(), one));
  }

  /**
   * A tree as it was read.
   *
   * @param uses what it was read from beside its own text
   */
  record Read(TreeReader.Read read, Set<String> uses) {}

  /** The tree of a text; as it was kept, if it is the library's own text. */
  Read read(String id, Source source) {
    Read known = kept.get(id);
    return known != null && known.read().tree().source() == source ? known : fresh(id, source);
  }

  /** Another tree of the library, as it is now, kept for who compiles it; empty if it cannot be read. */
  Optional<Tree> tree(String id) {
    return source(id).flatMap(source -> before(id, source).or(() -> Guarded.read(source,
        () -> Optional.of(kept.computeIfAbsent(id, any -> fresh(id, source)).read().tree()),
        failed -> Optional.empty())));
  }

  /** The text of another tree, parsed; empty if it cannot be read. */
  Optional<Document> document(String id) {
    return source(id).flatMap(source -> before(id, source).map(Tree::document).or(() -> Guarded.read(source,
        () -> Optional.of(documents.computeIfAbsent(id, any -> DocumentReader.read(source))),
        failed -> Optional.empty())));
  }

  private Optional<Source> source(String id) {
    return Optional.ofNullable(text.texts().get("trees/" + id + ".md"));
  }

  private Optional<Tree> before(String id, Source source) {
    return Optional.ofNullable(compiled.get(id)).map(CompiledTree::tree)
        .filter(tree -> tree.source().text().equals(source.text()));
  }

  private Read fresh(String id, Source source) {
    Set<String> uses = new HashSet<>();
    Document parsed = documents.get(id);
    Document document = parsed != null && parsed.source() == source ? parsed : DocumentReader.read(source);
    return new Read(TreeReader.read(id, document, Uses.noted(shared, uses)), uses);
  }
}
