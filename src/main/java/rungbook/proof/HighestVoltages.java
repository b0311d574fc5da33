package rungbook.proof;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rungbook.proof.plan.Budget;
import rungbook.proof.plan.Installations;
import rungbook.proof.plan.ProofContext;
import rungbook.proof.plan.StateEnumeration;
import rungbook.proof.plan.StateEnumeration.Measurement;
import rungbook.proof.plan.TopologicalOrder;
import rungbook.system.Vocabulary;
import rungbook.system.WalkTimes;
import rungbook.tree.Step;
import rungbook.tree.Tree;

/**
 * The highest voltage that the circuit gives at each check: over every state in which some path reaches the check, the
 * healthy system and every fault, and all installations. Only volts: the sources bound them, whereas ohms, amps and
 * microfarads depend on parts that may be worse than any fault the system lists.
 *
 * @param byStep in volts, without the meter's error; a check of which the circuit knows nothing is left out
 * @param isSolvable whether the circuit of the tree's system can be solved, though this tree may be too large
 */
public record HighestVoltages(Map<Integer, Double> byStep, boolean isSolvable) {

  /** Of a circuit that can be solved. */
  public HighestVoltages(Map<Integer, Double> byStep) {
    this(byStep, true);
  }

  public HighestVoltages {
    byStep = Map.copyOf(byStep);
  }

  /** Where there is no circuit. */
  public static HighestVoltages unknown() {
    return new HighestVoltages(Map.of(), false);
  }

  /**
   * Empty for a tree that cannot be proved, or that takes more work than the budget allows.
   *
   * @param installations of the tree's own system
   */
  public static HighestVoltages of(Tree tree, Installations installations, WalkTimes walkTimes, Budget budget) {
    Vocabulary words = tree.system().orElseThrow();
    ProofContext context = ProofContext.of(installations, walkTimes, words, tree.meter(), id -> Optional.empty());
    int mostStates = Math.max(1, budget.solutions() / installations.solutions());
    return TopologicalOrder.of(tree.steps())
        .flatMap(order -> StateEnumeration.remembered(tree.steps(), order, context, mostStates, budget.arrivals())
            .states())
        .map(states -> of(tree, installations, states)).orElse(new HighestVoltages(Map.of()));
  }

  private static HighestVoltages of(Tree tree, Installations installations, StateEnumeration states) {
    var byStep = new HashMap<Integer, Double>();
    states.measurements().forEach((step, measurements) -> {
      if (tree.steps().get(step) instanceof Step.MeterCheck check && check.quantity().isVolts()) {
        byStep.put(step, highest(measurements, installations, states));
      }
    });
    return new HighestVoltages(byStep);
  }

  /** The codes of what is no number are negative, and count as nothing. */
  private static double highest(Set<Measurement> measurements, Installations installations, StateEnumeration states) {
    double highest = 0;
    double[] read = new double[installations.samples()];
    var everyCase = new BitSet();
    everyCase.set(0, installations.cases().size());
    for (Measurement one : measurements) {
      Installations.Observations observed = installations.in(one.state(), states.probes(one.state()));
      observed.expect(everyCase);
      for (int caseNumber = 0; caseNumber < installations.cases().size(); caseNumber++) {
        observed.readings(caseNumber, one.probe(), read);
        for (double volts : read) {
          highest = Math.max(highest, volts);
        }
      }
    }
    return highest;
  }

  /** @param step the number of the check in the tree */
  public OptionalDouble at(int step) {
    Double volts = byStep.get(step);
    return volts == null ? OptionalDouble.empty() : OptionalDouble.of(volts);
  }
}
