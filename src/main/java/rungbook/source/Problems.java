package rungbook.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/** Gathers problems and hands them out in reading order, each once. Threads may share one. */
public final class Problems {

  private final List<Problem> found = new ArrayList<>();

  public synchronized void add(Problem problem) {
    found.add(problem);
  }

  public synchronized void addAll(List<Problem> problems) {
    found.addAll(problems);
  }

  /** In the order in which they were found. */
  public synchronized List<Problem> all() {
    return List.copyOf(found);
  }

  /** In reading order; the same code at the same place counts once, even when several trees share a fragment. */
  public synchronized List<Problem> inReadingOrder() {
    var once = new LinkedHashMap<Key, Problem>();
    found.forEach(p -> once.putIfAbsent(new Key(p.code(), p.source().name(), p.span()), p));
    return once.values().stream().sorted(Problem.IN_READING_ORDER).toList();
  }

  private record Key(Code code, String file, Span span) {}
}
