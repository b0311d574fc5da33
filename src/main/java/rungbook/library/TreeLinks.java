package rungbook.library;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import rungbook.library.lookup.TreeLink;
import rungbook.source.Source;

/** Which trees of a library link to which. */
final class TreeLinks {

  private final LibraryText text;
  private final Map<String, Set<String>> links = new ConcurrentHashMap<>();

  TreeLinks(LibraryText text) {
    this.text = text;
  }

  /** The trees on the paths that lead from the first ones to a tree; without that tree itself. */
  Set<String> between(Set<String> first, String id) {
    Set<String> reached = reached(first, this::of);
    Map<String, Set<String>> back = new HashMap<>();
    reached.forEach(from -> of(from).forEach(to -> back.computeIfAbsent(to, any -> new HashSet<>()).add(from)));
    Set<String> between = reached(back.getOrDefault(id, Set.of()), to -> back.getOrDefault(to, Set.of()));
    between.remove(id);
    return between;
  }

  /** The first ones, and all that a chain of links leads to. */
  static Set<String> reached(Collection<String> first, Function<String, Set<String>> links) {
    Set<String> reached = new HashSet<>(first);
    Deque<String> waiting = new ArrayDeque<>(reached);
    while (!waiting.isEmpty()) {
      links.apply(waiting.remove()).stream().filter(reached::add).forEach(waiting::add);
    }
    return reached;
  }

  private Set<String> of(String id) {
    return links.computeIfAbsent(id,
        any -> Optional.ofNullable(text.texts().get("trees/" + id + ".md")).map(TreeLinks::linked).orElse(Set.of()));
  }

  private static Set<String> linked(Source source) {
    return TreeLink.in(source.text()).stream().map(link -> source.text(link.span()))
        .collect(Collectors.toUnmodifiableSet());
  }
}
