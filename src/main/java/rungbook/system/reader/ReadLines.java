package rungbook.system.reader;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;
import rungbook.markdown.Entry;

/**
 * What the lines of a system were read as, each with the names that it asked for. A variant takes them over, except
 * where a name means something else in it.
 */
final class ReadLines<T> {

  private record Line<T>(T value, Set<String> asked) {}

  private final IdentityHashMap<Entry, Line<T>> lines = new IdentityHashMap<>();

  void keep(Entry entry, T value, Set<String> asked) {
    lines.put(entry, new Line<>(value, asked));
  }

  /** Empty for another line, and for one that asked for a name of these. */
  Optional<T> find(Entry entry, Set<String> changed) {
    Line<T> line = lines.get(entry);
    return line == null || !Collections.disjoint(line.asked(), changed) ? Optional.empty() : Optional.of(line.value());
  }
}
