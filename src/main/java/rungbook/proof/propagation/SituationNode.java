package rungbook.proof.propagation;

import rungbook.proof.plan.Situation;

/**
 * A step done in one stand, and who arrives there: by case a share for each sample, null for cases of which nobody
 * arrives.
 */
final class SituationNode {

  final int step;
  final Situation stand;
  final double[][] weights;

  SituationNode(int step, Situation stand, int cases) {
    this.step = step;
    this.stand = stand;
    this.weights = new double[cases][];
  }

  /** Takes the array for its own where it is the first. */
  void add(int caseNumber, double[] more) {
    double[] here = weights[caseNumber];
    if (here == null) {
      weights[caseNumber] = more;
      return;
    }
    for (int sample = 0; sample < here.length; sample++) {
      here[sample] += more[sample];
    }
  }
}
