package rungbook.proof.pairs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungbook.circuit.ParallelTasks;
import rungbook.circuit.network.Cancellation;
import rungbook.circuit.network.CircuitState;
import rungbook.proof.handover.HandOverPropagation;
import rungbook.proof.handover.Journeys;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.DictionaryInstallations;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.OtherTrees;
import rungbook.proof.plan.Population;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.StateEnumeration;
import rungbook.proof.plan.TopologicalOrder;
import rungbook.proof.propagation.Propagation;
import rungbook.proof.propagation.PropagationResult;
import rungbook.proof.report.EveryPair;
import rungbook.proof.report.Proof;
import rungbook.system.ControlSystem;
import rungbook.system.WalkTimes;
import rungbook.tree.Tree;

/**
 * Carries every pair of faults through the trees of a system. The pairs are solved some at a time, so that their
 * readings need little memory; the readings of one portion serve all trees.
 */
public final class EveryPairPropagation {

  /** Pairs that are solved together. Only those that give a complaint have readings, which need the memory. */
  private static final int PORTION = 300;

  /** Portions at a time: the installations of one are too few for several cores. */
  private static final int AT_ONCE = 2;

  private final ControlSystem system;
  private final WalkTimes walkTimes;
  private final OtherTrees others;
  private final Budget budget;
  private final List<PairTally> tallies;

  private EveryPairPropagation(ControlSystem system, WalkTimes walkTimes, OtherTrees others,
      Budget budget, List<PairTally> tallies) {
    this.system = system;
    this.walkTimes = walkTimes;
    this.others = others;
    this.budget = budget;
    this.tallies = tallies;
  }

  /**
   * @param system the base, without its variants
   * @param proofs of trees of this system
   * @param others the other trees of the library, by id
   * @return what each tree does, in the order of the proofs
   */
  public static List<EveryPair> of(ControlSystem system, WalkTimes walkTimes, List<Proof> proofs,
      OtherTrees others, Budget budget, PairBounds bounds) {
    List<PairTally> tallies = proofs.stream().map(PairTally::new).toList();
    var propagation = new EveryPairPropagation(system, walkTimes, others, budget, tallies);
    List<int[]> every = pairs(system);
    List<int[]> pairs = every.subList(0, Math.min(bounds.pairs(), every.size()));
    portions(pairs, AT_ONCE * PORTION).forEach(some -> propagation.followAtOnce(some, bounds.drawn()));
    return tallies.stream().map(tally -> tally.report(pairs.size(), every.size(), bounds.drawn())).toList();
  }

  private static Stream<List<int[]>> portions(List<int[]> pairs, int size) {
    return IntStream.iterate(0, from -> from < pairs.size(), from -> from + size)
        .mapToObj(from -> pairs.subList(from, Math.min(pairs.size(), from + size)));
  }

  /** Indexes of every two faults, the likeliest first. */
  private static List<int[]> pairs(ControlSystem system) {
    List<int[]> pairs = new ArrayList<>();
    for (int first = 0; first < system.faults().size(); first++) {
      for (int second = first + 1; second < system.faults().size(); second++) {
        pairs.add(new int[] {first, second});
      }
    }
    pairs.sort(Comparator.comparingDouble((int[] pair) -> -system.faults().get(pair[0]).likelihood()
        * system.faults().get(pair[1]).likelihood()));
    return pairs;
  }

  /** A tree with the pairs of one portion that give its complaint. */
  private record Followed(PairTally tally, ProofContext context, PropagationResult result, Journeys journeys) {}

  /** Adds up in the order of the pairs, so that sums do not depend on which portion is done first. */
  private void followAtOnce(List<int[]> pairs, int drawn) {
    List<List<int[]>> portions = portions(pairs, PORTION).toList();
    var followed = new AtomicReferenceArray<List<Followed>>(portions.size());
    ParallelTasks.run(portions.size(), i -> followed.set(i, follow(portions.get(i), drawn)));
    for (int i = 0; i < portions.size(); i++) {
      followed.get(i).forEach(one -> one.tally().add(one.context(), one.result(), one.journeys()));
    }
  }

  /** What is seen of all pairs is asked first: the others are not followed. */
  private List<Followed> follow(List<int[]> pairs, int drawn) {
    Installations installations = DictionaryInstallations.ofPairs(system, pairs, drawn);
    CircuitState start = CircuitState.start(system.vocabulary());
    var followed = new ArrayList<Followed>();
    for (PairTally tally : tallies) {
      Cancellation.check();
      Population giving = Population.of(tally.tree().symptoms(), installations, start);
      if (giving.hasFaults()) {
        follow(tally, giving, installations).ifPresent(followed::add);
      }
    }
    return followed;
  }

  /** The tree was proved before, so its ways on have an order. More states than the budget allows are left out. */
  private Optional<Followed> follow(PairTally tally, Population giving, Installations installations) {
    Tree tree = tally.tree();
    ProofContext context = ProofContext.of(installations, walkTimes, tree.system().orElseThrow(), tree.meter(), others)
        .on(giving);
    int[] order = TopologicalOrder.of(tree.steps()).orElseThrow();
    int mostStates = Math.max(1, budget.solutions() / installations.solutions());
    return StateEnumeration.of(tree.steps(), order, context, mostStates, budget.arrivals()).states().map(states -> {
      PropagationResult result = Propagation.run(tree, context, states, order);
      return new Followed(tally, context, result, HandOverPropagation.of(tree, context, result, budget));
    });
  }
}
