package rungbook.proof.accounting;

import java.util.Arrays;

/** The lowest and the highest reading of each case at a check, over the drawn installations. */
public final class CaseReadings {

  private final double[] lowest;
  private final double[] highest;
  private final double[] weight;

  CaseReadings(int cases) {
    lowest = new double[cases];
    highest = new double[cases];
    weight = new double[cases];
    Arrays.fill(lowest, Double.POSITIVE_INFINITY);
    Arrays.fill(highest, Double.NEGATIVE_INFINITY);
  }

  void add(int caseNumber, double reading, double more) {
    lowest[caseNumber] = Math.min(lowest[caseNumber], reading);
    highest[caseNumber] = Math.max(highest[caseNumber], reading);
    weight[caseNumber] += more;
  }

  /** Whether the case is read here at all. */
  public boolean has(int caseNumber) {
    return weight[caseNumber] > 0;
  }

  public double lowest(int caseNumber) {
    return lowest[caseNumber];
  }

  public double highest(int caseNumber) {
    return highest[caseNumber];
  }

  /** How much of the case comes here, by likelihood. */
  public double weight(int caseNumber) {
    return weight[caseNumber];
  }
}
