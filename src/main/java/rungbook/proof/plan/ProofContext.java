package rungbook.proof.plan;

import java.util.Optional;
import java.util.function.Function;
import rungbook.circuit.network.CircuitState;
import rungbook.system.Vocabulary;
import rungbook.system.WalkTimes;
import rungbook.tree.Meter;
import rungbook.tree.Tree;

/** All that a walk needs beside the tree itself. */
public record ProofContext(Installations installations, WalkTimes walks, ProbePlan question, ReachableFindings behind,
    Situation start,
    Function<String, Optional<Tree>> others) {

  public static ProofContext of(Installations installations, WalkTimes walks, Vocabulary words, Meter meter,
      Function<String, Optional<Tree>> others) {
    return new ProofContext(installations, walks, new ProbePlan(installations, words, meter),
        new ReachableFindings(installations.cases(), others),
        new Situation(CircuitState.start(words), walks.start()), others);
  }
}
