package rungbook.library.solving;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rungbook.library.LibraryText;
import rungbook.source.Source;
import rungbook.system.Vocabulary;
import rungbook.tree.Tree;

/** The most recently used systems, each with its circuit until its text changes. Thread-safe. */
final class PreparedSystems {

  private static final int MOST_KEPT = 8;

  private final PreparedSystem.Making making;
  private final Map<String, PreparedSystem> systems = new LinkedHashMap<>(16, 0.75f, true) {
    @Override
    protected boolean removeEldestEntry(Map.Entry<String, PreparedSystem> eldest) {
      return size() > MOST_KEPT;
    }
  };

  PreparedSystems(PreparedSystem.Making making) {
    this.making = making;
  }

  /** The system of a tree; empty if it names none, or one that the library does not have. */
  Optional<PreparedSystem> of(Tree tree, LibraryText text) {
    return tree.system().map(Vocabulary::id).flatMap(id -> of(id, text));
  }

  Optional<PreparedSystem> of(String id, LibraryText text) {
    return Optional.ofNullable(text.in("shared/systems/").get(id)).map(source -> of(id, source));
  }

  /** Locked only for the lookup: systems are built outside the lock, so a slow one delays only its own users. */
  private synchronized PreparedSystem of(String id, Source source) {
    PreparedSystem known = systems.get(id);
    if (known == null || !known.source().text().equals(source.text())) {
      known = new PreparedSystem(id, source, making);
      systems.put(id, known);
    }
    return known;
  }
}
