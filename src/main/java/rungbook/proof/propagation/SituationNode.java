package rungbook.proof.propagation;

import rungbook.proof.plan.Situation;

/**
 * A step done in one situation, and the samples that arrive there: by case a weight for each sample, null for a case of
 * which no sample arrives.
 */
final class SituationNode {

  final int step;
  final Situation situation;
  final double[][] weights;

  SituationNode(int step, Situation situation, int cases) {
    this.step = step;
    this.situation = situation;
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
