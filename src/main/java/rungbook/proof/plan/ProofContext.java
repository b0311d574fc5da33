package rungbook.proof.plan;

import java.util.Optional;
import java.util.function.Function;
import rungbook.circuit.network.CircuitState;
import rungbook.system.Vocabulary;
import rungbook.system.WalkTimes;
import rungbook.tree.Meter;
import rungbook.tree.Tree;

/** All that a propagation needs beside the tree itself. */
public record ProofContext(Installations installations, WalkTimes walkTimes, ProbePlan probePlan,
    ReachableFindings findings, Situation start,
    Function<String, Optional<Tree>> others) {

  public static ProofContext of(Installations installations, WalkTimes walkTimes, Vocabulary words, Meter meter,
      Function<String, Optional<Tree>> others) {
    return new ProofContext(installations, walkTimes, new ProbePlan(installations, words, meter),
        new ReachableFindings(installations.cases(), others),
        new Situation(CircuitState.start(words), walkTimes.start()), others);
  }
}
