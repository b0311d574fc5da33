package rungbook.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/** Gathers problems and hands them out in reading order, each once. */
public final class Problems {

  private final List<Problem> found = new ArrayList<>();

  public void add(Problem problem) {
    found.add(problem);
  }

  public void addAll(List<Problem> problems) {
    found.addAll(problems);
  }

  /** In reading order; the same code at the same place counts once, even when several trees share a fragment. */
  public List<Problem> inReadingOrder() {
    var once = new LinkedHashMap<Key, Problem>();
    found.forEach(p -> once.putIfAbsent(new Key(p.code(), p.source().name(), p.span()), p));
    return once.values().stream().sorted(Problem.IN_READING_ORDER).toList();
  }

  private record Key(String code, String file, Span span) {}
}
