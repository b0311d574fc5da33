package rungbook.proof.accounting;

/**
 * How well a tree finds faults, in the sense of IEEE 1522 (from memory). A fault is detected where it arrives at a
 * finding that names it; faults that share such a finding are an ambiguity group.
 *
 * @param likelihood the sum over the faults in question
 * @param detected the share of the likelihood that is detected
 * @param isolated of the detected likelihood, the share in groups of at most 1, 2, 3 faults
 * @param meanGroup mean size of the groups, by likelihood
 */
public record TestabilityMeasures(int faults, double likelihood, double detected, double[] isolated, double meanGroup) {

  private static final int LARGEST = 3;

  /** The share isolated to groups of at most so many, 1 to 3. */
  public double isolatedTo(int most) {
    return isolated[most - 1];
  }

  /** The same, where some of the cases are two faults at once and only the others are counted. */
  public TestabilityMeasures ofFaults(int count) {
    return new TestabilityMeasures(count, likelihood, detected, isolated, meanGroup);
  }

  /**
   * @param likelihoods by fault
   * @param found by fault, then by group: the share that arrives there and is named there
   * @param sizes by group, how many faults are in it
   */
  public static TestabilityMeasures of(double[] likelihoods, double[][] found, int[] sizes) {
    double all = 0;
    double detected = 0;
    double weightedSize = 0;
    double[] isolated = new double[LARGEST];
    for (int fault = 0; fault < likelihoods.length; fault++) {
      all += likelihoods[fault];
      for (int group = 0; group < sizes.length; group++) {
        double mass = likelihoods[fault] * found[fault][group];
        detected += mass;
        weightedSize += mass * sizes[group];
        for (int most = Math.max(1, sizes[group]); most <= LARGEST; most++) {
          isolated[most - 1] += mass;
        }
      }
    }
    for (int i = 0; i < LARGEST; i++) {
      isolated[i] = over(isolated[i], detected);
    }
    return new TestabilityMeasures(likelihoods.length, all, over(detected, all), isolated,
        over(weightedSize, detected));
  }

  private static double over(double part, double whole) {
    return whole == 0 ? 0 : part / whole;
  }
}
