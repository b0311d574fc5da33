package rungbook.proof;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.Population;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.StateEnumeration;
import rungbook.proof.plan.TopologicalOrder;
import rungbook.proof.propagation.SuspectPropagation;
import rungbook.system.WalkTimes;
import rungbook.tree.Tree;

/**
 * Which faults can still be the cause at each step of a tree, as far as the circuit can say. Never too few: a fault
 * that a proof brings to a step, or along a way, is among them.
 *
 * @param cases each a fault, or faults that come together; the first is the healthy system
 * @param arriving by step, the numbers of the cases that can come there; a step after a finding has none
 * @param taking by step and way on, the numbers of the cases that can take it
 */
public record Suspects(List<Case> cases, Map<Integer, BitSet> arriving, Map<Integer, List<BitSet>> taking) {

  /** Where there is no circuit, or the tree cannot be followed on it. */
  public static final Suspects UNKNOWN = new Suspects(List.of(), Map.of(), Map.of());

  /**
   * @param faults the keys of its faults; none of the healthy system
   * @param likelihood that it gives the complaint, against the others; 0 for the healthy system
   */
  public record Case(List<String> faults, double likelihood) {}

  public Suspects {
    cases = List.copyOf(cases);
    arriving = Map.copyOf(arriving);
    taking = Map.copyOf(taking);
  }

  /**
   * Unknown for a tree that cannot be proved, or that takes more work than the budget allows.
   *
   * @param installations of the tree's own system, few of them
   */
  public static Suspects of(Tree tree, Installations installations, WalkTimes walkTimes, Budget budget) {
    ProofContext context = ProofContext.of(installations, walkTimes, tree.system().orElseThrow(), tree.meter(),
        id -> Optional.empty());
    int mostStates = Math.max(1, budget.solutions() / installations.solutions());
    if (tree.symptoms().map(Population::stateCount).orElse(0L) > mostStates) {
      return UNKNOWN;
    }
    return TopologicalOrder.of(tree.steps())
        .flatMap(order -> StateEnumeration.of(tree.steps(), order, context, mostStates, budget.arrivals()).states()
            .map(states -> of(tree, context.on(tree.symptoms(), states), states, order)))
        .orElse(UNKNOWN);
  }

  private static Suspects of(Tree tree, ProofContext context, StateEnumeration states, int[] order) {
    SuspectPropagation.Result result = SuspectPropagation.of(tree, context, states, order);
    Installations installations = context.installations();
    return new Suspects(IntStream.range(0, installations.cases().size())
        .mapToObj(one -> new Case(installations.faults(one), installations.likelihood(one))).toList(),
        result.arriving(), result.taking());
  }
}
