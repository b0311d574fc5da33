package rungbook.proof.advice;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rungbook.proof.report.Proof;
import rungbook.source.Problem;
import rungbook.source.Severity;
import rungbook.source.Witness;
import rungbook.source.Wording;

/**
 * What to do about a tree.
 *
 * @param first what to do, what can hurt or mislead most first
 * @param behind how many more problems are shown by paths past a limit that has to move first; moving it may remove
 * them
 */
public record Advice(List<Recommendation> first, int behind) {

  public Advice {
    first = List.copyOf(first);
  }

  /** @param shown the proof's problems that the text does not silence; notes ask for nothing */
  public static Advice of(Proof proof, List<Problem> shown) {
    var finder = new RecommendationFinder(proof);
    List<Recommendation> all = shown.stream().filter(problem -> Wording.of(problem).severity() != Severity.NOTE)
        .map(finder::of).toList();
    Set<String> moving = all.stream().filter(Recommendation.MoveLimit.class::isInstance)
        .map(one -> ((Recommendation.MoveLimit) one).check().title()).collect(Collectors.toSet());
    List<Recommendation> first = all.stream().filter(one -> !isBehind(one, moving)).sorted(Harm.WORST_FIRST).toList();
    return new Advice(first, all.size() - first.size());
  }

  private static boolean isBehind(Recommendation one, Set<String> moving) {
    return !(one instanceof Recommendation.MoveLimit) && !Harm.isDangerous(one)
        && one.problem().witness().filter(witness -> passes(witness, moving)).isPresent();
  }

  private static boolean passes(Witness witness, Set<String> titles) {
    return witness instanceof Witness.Path path
        && path.stops().stream().map(Witness.Stop::step).anyMatch(titles::contains);
  }
}
