package rungbook.proof.propagation;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import rungbook.proof.plan.Situation;

/** The cases and samples that arrive where a tree begins, by the situation in which they do. */
public final class Arriving {

  private final int cases;
  private final int drawn;
  private final Map<Situation, SituationNode> bySituation = new LinkedHashMap<>();

  Arriving(int cases, int drawn) {
    this.cases = cases;
    this.drawn = drawn;
  }

  void add(Situation situation, int caseNumber, double[] weights) {
    bySituation.computeIfAbsent(situation, s -> new SituationNode(0, s, cases)).add(caseNumber, weights.clone());
  }

  void forEach(BiConsumer<Situation, SituationNode> taker) {
    bySituation.forEach(taker);
  }

  public Set<Situation> situations() {
    return bySituation.keySet();
  }

  /** By case, the share of the drawn samples. */
  public double[] shares() {
    double[] shares = new double[cases];
    forEachWeight((caseNumber, sample, weight) -> shares[caseNumber] += sample < drawn ? weight / drawn : 0);
    return shares;
  }

  /** By case, the drawn sample that arrives most; −1 if none does. */
  public int[] samples() {
    int[] samples = new int[cases];
    double[] heaviest = new double[cases];
    Arrays.fill(samples, -1);
    forEachWeight((caseNumber, sample, weight) -> {
      if (sample < drawn && weight > heaviest[caseNumber]) {
        heaviest[caseNumber] = weight;
        samples[caseNumber] = sample;
      }
    });
    return samples;
  }

  private interface Weighed {
    void take(int caseNumber, int sample, double weight);
  }

  private void forEachWeight(Weighed taker) {
    for (SituationNode node : bySituation.values()) {
      for (int caseNumber = 0; caseNumber < cases; caseNumber++) {
        double[] weights = node.weights[caseNumber];
        for (int sample = 0; weights != null && sample < weights.length; sample++) {
          taker.take(caseNumber, sample, weights[sample]);
        }
      }
    }
  }
}
