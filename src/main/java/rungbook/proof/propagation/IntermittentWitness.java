package rungbook.proof.propagation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.Situation;
import rungbook.source.Witness;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/** Finds the way of one installation whose fault is gone from some check on. */
public final class IntermittentWitness {

  private final Tree tree;
  private final ProofContext context;
  private final PossibleAnswers answers;
  private final GoneFaults gone;

  public IntermittentWitness(Tree tree, ProofContext context, PossibleAnswers answers) {
    this.tree = tree;
    this.context = context;
    this.answers = answers;
    this.gone = new GoneFaults(context.installations(), answers.observed());
  }

  /** @param goneFrom the title of the check from which on the fault is gone */
  public record Way(Witness.Path path, String goneFrom) {}

  /** The way on which the fault is gone as late as possible. */
  public Optional<Way> to(int finding, int caseNumber, int sample) {
    return IntStream.range(0, tree.steps().size()).filter(step -> tree.steps().get(step) instanceof Step.Check)
        .mapToObj(step -> goneFrom(step, finding, caseNumber, sample)).flatMap(Optional::stream)
        .max(Comparator.comparingInt((Found found) -> found.checks())).map(Found::way);
  }

  /** @param checks how many steps come before the one from which on the fault is gone */
  private record Found(Way way, int checks) {}

  private Optional<Found> goneFrom(int step, int finding, int caseNumber, int sample) {
    return search(0, context.start(), caseNumber, sample).toSituation(step).flatMap(before -> {
      int as = gone.as(caseNumber, before.left().state())[sample];
      return search(step, before.left(), as, sample).toStep(finding).map(after -> join(before.path(), after));
    });
  }

  private static Found join(Witness.Path before, Witness.Path after) {
    List<Witness.Stop> stops = new ArrayList<>(before.stops().subList(0, before.stops().size() - 1));
    stops.addAll(after.stops());
    return new Found(new Way(new Witness.Path(stops, after.variant()), after.stops().get(0).step()),
        before.stops().size());
  }

  private WitnessSearch search(int first, Situation start, int caseNumber, int sample) {
    Installations installations = context.installations();
    return new WitnessSearch(tree, first, start, answers, caseNumber, sample,
        installations.variants().get(installations.variant(sample)).name());
  }
}
