package rungbook.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Function;

/** Collects problems. Thread-safe. */
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

  /** In reading order, each code once per place, even when several trees share a fragment. */
  public synchronized List<Problem> inReadingOrder() {
    return once(found, problem -> problem);
  }

  /** The same for what has a problem. */
  static <T> List<T> once(List<T> found, Function<T, Problem> problem) {
    var once = new LinkedHashMap<Key, T>();
    found.forEach(one -> once.putIfAbsent(Key.of(problem.apply(one)), one));
    return once.values().stream().sorted(Comparator.comparing(problem, Problem.IN_READING_ORDER)).toList();
  }

  private record Key(Code code, String file, Span span) {
    static Key of(Problem problem) {
      return new Key(problem.code(), problem.source().name(), problem.span());
    }
  }
}
