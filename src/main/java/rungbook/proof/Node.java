package rungbook.proof;

/** A step done in one stand, and who arrives there: by case a share for each sample, null for cases of which nobody arrives. */
final class Node {

  final int step;
  final Stand stand;
  final double[][] weights;

  Node(int step, Stand stand, int cases) {
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
