package rungbook.proof.propagation;

import java.util.BitSet;
import rungbook.proof.plan.Installations;
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

  /** The cases of which some sample arrives. */
  BitSet cases() {
    var arriving = new BitSet();
    for (int i = 0; i < weights.length; i++) {
      arriving.set(i, weights[i] != null);
    }
    return arriving;
  }

  /** The variants of the system of which some installation comes here, healthy or not. */
  boolean[] variants(Installations installations) {
    boolean[] reaching = new boolean[installations.variants().size()];
    for (double[] ofCase : weights) {
      for (int sample = 0; ofCase != null && sample < ofCase.length; sample++) {
        reaching[installations.variant(sample)] |= ofCase[sample] > 0;
      }
    }
    return reaching;
  }

  /** Whether any sample has a weight. */
  static boolean any(double[] weights) {
    for (double weight : weights) {
      if (weight > 0) {
        return true;
      }
    }
    return false;
  }
}
