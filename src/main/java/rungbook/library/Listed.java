package rungbook.library;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rungbook.source.Code;
import rungbook.source.Problem;
import rungbook.source.ProblemList;
import rungbook.source.Problems;
import rungbook.source.Span;
import rungbook.source.TextLimits;
import rungbook.source.Witness;
import rungbook.source.Wording;

/** Limits the problems of each text: keeps the worst, and adds a note with the number of the others. */
final class Listed {

  static final Code MORE_PROBLEMS = Code.of("more-problems");

  /** The total number of stops in the witnesses of one text; past this, problems are listed without a witness. */
  private static final int MOST_STOPS = 20_000;

  private static final Comparator<
      Problem> WORST_FIRST = Comparator.comparing(problem -> Wording.of(problem).severity());

  private Listed() {}

  static ProblemList of(ProblemList found, TextLimits limits) {
    return found.showing(of(found.shown(), limits));
  }

  /** @param problems in reading order */
  private static List<Problem> of(List<Problem> problems, TextLimits limits) {
    if (problems.size() <= limits.problems()) {
      return withFewStops(problems);
    }
    Map<String, List<Problem>> byText = problems.stream()
        .collect(Collectors.groupingBy(problem -> problem.source().name(), LinkedHashMap::new, Collectors.toList()));
    Problems listed = new Problems();
    byText.values().forEach(ofText -> listed.addAll(worst(ofText, limits.problems())));
    return withFewStops(listed.inReadingOrder());
  }

  private static List<Problem> worst(List<Problem> problems, int most) {
    if (problems.size() <= most) {
      return problems;
    }
    var worst = new ArrayList<>(problems.stream().sorted(WORST_FIRST).limit(most).toList());
    worst.add(Problem.at(MORE_PROBLEMS, problems.get(0).source(), Span.at(0)).with("more", problems.size() - most)
        .with("most", most));
    return worst;
  }

  private static List<Problem> withFewStops(List<Problem> problems) {
    var shown = new ArrayList<Problem>(problems.size());
    int stops = 0;
    for (Problem problem : problems) {
      stops += stops(problem);
      shown.add(stops <= MOST_STOPS ? problem
          : problem.shownBy(Optional.empty()));
    }
    return shown;
  }

  private static int stops(Problem problem) {
    return problem.witness().orElse(null) instanceof Witness.Path path ? path.stops().size() : 0;
  }
}
