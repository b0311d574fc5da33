package rungbook.source;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Finds the line that silences a problem, in time that hardly grows with how many lines there are. */
final class QuietIndex {

  /** By code, then by file, then by where the stretch starts in which it counts. */
  private final Map<Code, Map<String, TreeMap<Integer, Stretch>>> stretches = new HashMap<>();

  private record Stretch(Span span, Quiet quiet) {}

  QuietIndex(List<Quiet> quiets) {
    for (Quiet quiet : quiets) {
      var inFile = stretches.computeIfAbsent(quiet.code(), code -> new HashMap<>())
          .computeIfAbsent(quiet.source().name(), name -> new TreeMap<>());
      quiet.within().forEach(span -> inFile.putIfAbsent(span.start(), new Stretch(span, quiet)));
    }
  }

  Optional<Quiet> find(Problem problem) {
    TreeMap<Integer, Stretch> inFile = stretches.getOrDefault(problem.code(), Map.of()).get(problem.source().name());
    int start = problem.span().start();
    return Optional.ofNullable(inFile).map(found -> found.floorEntry(start)).map(Map.Entry::getValue)
        .filter(stretch -> start < stretch.span().end() || start == problem.source().text().length())
        .map(Stretch::quiet);
  }
}
