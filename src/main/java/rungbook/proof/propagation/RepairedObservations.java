package rungbook.proof.propagation;

import java.util.Arrays;
import rungbook.circuit.Probe;
import rungbook.proof.plan.Installations;

/** What is observed once a fault is taken away: each sample is that of another case. */
record RepairedObservations(Installations.Observations of, int[] cases) implements Installations.Observations {

  /** @param caseNumber has no meaning here */
  @Override
  public void readings(int caseNumber, Probe probe, double[] into) {
    double[] read = new double[into.length];
    Arrays.stream(cases).distinct().forEach(one -> {
      of.readings(one, probe, read);
      for (int sample = 0; sample < into.length; sample++) {
        into[sample] = cases[sample] == one ? read[sample] : into[sample];
      }
    });
  }

  /** @param caseNumber has no meaning here */
  @Override
  public void seen(int caseNumber, String sight, boolean[] into) {
    boolean[] seen = new boolean[into.length];
    Arrays.stream(cases).distinct().forEach(one -> {
      of.seen(one, sight, seen);
      for (int sample = 0; sample < into.length; sample++) {
        into[sample] = cases[sample] == one ? seen[sample] : into[sample];
      }
    });
  }
}
