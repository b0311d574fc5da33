package rungbook.proof.pairs;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.propagation.ArrivalTable;
import rungbook.proof.propagation.End;
import rungbook.proof.propagation.PropagationResult;
import rungbook.proof.propagation.WitnessSearch;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.Journey;
import rungbook.source.Witness;
import rungbook.tree.Tree;

/**
 * A pair in which one fault masks another.
 *
 * @param lost the share that ends at a wrong part or is called healthy
 * @param weight of that, in the unit of the likelihoods
 */
record PairCandidate(int caseNumber, String masked, String by, boolean isMutual, Journey journey, double lost,
    double weight) {

  /** @param result of the tree where the work begins */
  EveryPair.Mask mask(Tree tree, ProofContext context, PropagationResult result) {
    Journey.Place place = journey.places().stream()
        .filter(one -> one.fate() == Journey.Fate.MISTAKEN || one.fate() == Journey.Fate.HEALTHY)
        .max(Comparator.comparingDouble(Journey.Place::share)).orElseThrow();
    return new EveryPair.Mask(masked, by, isMutual, place.fate(), place.tree(), place.title(), lost, weight,
        path(place, tree, context, result));
  }

  /** To the end, or to where another tree takes over. */
  private Optional<Witness.Path> path(Journey.Place place, Tree tree, ProofContext context,
      PropagationResult result) {
    Stream<ArrivalTable.Arrivals> ends = result.ends().stream().filter(one -> one.witness()[caseNumber] >= 0);
    if (!place.through().isEmpty()) {
      return ends.filter(one -> one.end().equals(new End.HandedOn(place.through()))).findFirst()
          .flatMap(one -> result.handedOn().keySet().stream().filter(to -> to.tree().equals(place.through()))
              .flatMap(to -> search(tree, one, context, result).toTree(to).stream())
              .map(WitnessSearch.HandOver::path).findFirst());
    }
    return ends.filter(one -> one.end() instanceof End.Finding finding
        && tree.steps().get(finding.step()).title().equals(place.title())).findFirst()
        .flatMap(one -> search(tree, one, context, result).to(one.end()));
  }

  private WitnessSearch search(Tree tree, ArrivalTable.Arrivals arrivals, ProofContext context,
      PropagationResult result) {
    return new WitnessSearch(tree, context.start(), result.possibleAnswers(), caseNumber,
        arrivals.witness()[caseNumber], "");
  }
}
