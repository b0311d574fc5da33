package rungbook.proof;

import rungbook.source.Problems;

/** One thing that a walk through a tree may show to be wrong with it. */
@FunctionalInterface
interface ProofRule {

  void inspect(Inspection seen, Problems out);
}
