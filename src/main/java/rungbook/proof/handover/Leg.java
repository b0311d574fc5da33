package rungbook.proof.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.Situation;
import rungbook.proof.propagation.PropagationResult;
import rungbook.proof.propagation.WitnessSearch;
import rungbook.source.Witness;
import rungbook.tree.Target;
import rungbook.tree.Tree;

/**
 * One tree on the way through several.
 *
 * @param before the leg that handed over; empty for the tree where the work began
 * @param entry how this tree was entered
 * @param first its step at which the work begins
 */
public record Leg(Optional<Leg> before, Target.ToTree entry, Tree tree, int first, ProofContext context,
    PropagationResult result) {

  /** This leg and those before it, in order. */
  public List<Leg> all() {
    return Stream.concat(before.stream().flatMap(leg -> leg.all().stream()), Stream.of(this)).toList();
  }

  /** How many trees there are up to this one. */
  int depth() {
    return 1 + before.map(Leg::depth).orElse(0);
  }

  /** A tree that has had the work: as it is here, which may be newer than the one of the library. */
  Optional<Tree> known(String id) {
    return tree.id().equals(id) ? Optional.of(tree) : before.flatMap(leg -> leg.known(id));
  }

  /** Whether the work has begun at this step of a tree before. */
  boolean hasEntered(String id, int step) {
    return (tree.id().equals(id) && first == step) || before.filter(leg -> leg.hasEntered(id, step)).isPresent();
  }

  /** The steps of one installation from the first tree to where this one hands over. */
  Optional<Witness.Path> pathTo(Target.ToTree next, int caseNumber, int sample) {
    var stops = new ArrayList<Witness.Stop>();
    Situation start = all().get(0).context().start();
    List<Leg> legs = all();
    for (int i = 0; i < legs.size(); i++) {
      Target.ToTree other = i + 1 < legs.size() ? legs.get(i + 1).entry() : next;
      Optional<WitnessSearch.HandOver> over = legs.get(i).search(start, caseNumber, sample).toTree(other);
      if (over.isEmpty()) {
        return Optional.empty();
      }
      stops.addAll(over.get().path().stops());
      start = over.get().left();
    }
    return Optional.of(new Witness.Path(stops, variant(sample)));
  }

  private WitnessSearch search(Situation start, int caseNumber, int sample) {
    return new WitnessSearch(tree, first, start, result.possibleAnswers(), caseNumber, sample, variant(sample));
  }

  private String variant(int sample) {
    Installations installations = context.installations();
    return installations.variants().get(installations.variant(sample)).name();
  }
}
