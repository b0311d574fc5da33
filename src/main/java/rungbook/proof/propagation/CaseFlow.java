package rungbook.proof.propagation;

import java.util.List;
import rungbook.tree.Step;

/** How much of each case passes each step and each way on, and the work it takes, as means over the drawn samples. */
public final class CaseFlow {

  private final List<Step> steps;
  private final int cases;
  private final int drawn;
  private final double[][][] taken;
  private final double[] checks;
  private final double[] minutes;

  CaseFlow(List<Step> steps, int cases, int drawn) {
    this.steps = steps;
    this.cases = cases;
    this.drawn = drawn;
    taken = new double[steps.size()][][];
    checks = new double[cases];
    minutes = new double[cases];
  }

  void arrive(SituationNode node) {
    Step step = steps.get(node.step);
    if (!reached(node.step)) {
      taken[node.step] = new double[step.ways().size()][cases];
    }
    double stepMinutes = step.minutes().doubleValue();
    for (int i = 0; i < cases; i++) {
      if (node.weights[i] != null) {
        double share = share(node.weights[i]);
        checks[i] += step instanceof Step.Check ? share : 0;
        minutes[i] += share * stepMinutes;
      }
    }
  }

  /** @return the share of the case's drawn samples that takes the way */
  double take(int step, int way, int caseNumber, double[] weights) {
    double share = share(weights);
    taken[step][way][caseNumber] += share;
    return share;
  }

  void addMinutes(int caseNumber, double more) {
    minutes[caseNumber] += more;
  }

  /** The share of the drawn samples. */
  double share(double[] weights) {
    double sum = 0;
    for (int sample = 0; sample < drawn; sample++) {
      sum += weights[sample];
    }
    return sum / drawn;
  }

  public boolean reached(int step) {
    return taken[step] != null;
  }

  /** The share of a case's drawn samples that takes a way. */
  public double taken(int step, int way, int caseNumber) {
    return taken[step] == null ? 0 : taken[step][way][caseNumber];
  }

  /** How many checks a case takes. */
  public double checks(int caseNumber) {
    return checks[caseNumber];
  }

  /** How many minutes a case takes, walking included. */
  public double minutes(int caseNumber) {
    return minutes[caseNumber];
  }
}
