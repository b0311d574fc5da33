package rungbook.proof.propagation;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import rungbook.proof.plan.Installations;

/** The cases that arrive at each end of a tree. */
public final class ArrivalTable {

  /**
   * @param shares by case, of the drawn samples
   * @param byVariant by variant of the system and case, of the variant's drawn samples that count in the case
   * @param witness by case the sample that shows it best; −1 if none arrives
   */
  public record Arrivals(End end, double[] shares, double[][] byVariant, int[] witness) {}

  private final Installations installations;
  private final int drawn;
  private final int cases;
  private final long[][] counting;
  private final Map<End, double[]> best = new HashMap<>();
  private final Map<End, Arrivals> byEnd = new LinkedHashMap<>();

  ArrivalTable(Installations installations) {
    this.installations = installations;
    this.cases = installations.cases().size();
    this.drawn = installations.drawn();
    this.counting = new long[installations.variants().size()][cases];
  }

  void arrive(End end, int caseNumber, double[] weights) {
    Arrivals arrivals = byEnd.computeIfAbsent(end, e -> new Arrivals(e, new double[cases],
        new double[installations.variants().size()][cases], noWitness()));
    double[] heaviest = best.computeIfAbsent(end, e -> new double[cases]);
    for (int sample = 0; sample < weights.length; sample++) {
      // a drawn sample tells more than a corner, so a corner is a witness only where no drawn one is
      boolean better = weights[sample] > heaviest[caseNumber] && (sample < drawn || arrivals.witness()[caseNumber] < 0);
      if (better) {
        heaviest[caseNumber] = weights[sample];
        arrivals.witness()[caseNumber] = sample;
      }
      if (sample < drawn && weights[sample] > 0) {
        add(arrivals, caseNumber, sample, weights[sample]);
      }
    }
  }

  private void add(Arrivals arrivals, int caseNumber, int sample, double weight) {
    int variant = installations.variant(sample);
    arrivals.shares()[caseNumber] += weight / drawn;
    arrivals.byVariant()[variant][caseNumber] += weight / installations.weight(caseNumber, sample)
        / counting(variant, caseNumber);
  }

  /** How many drawn installations of a variant count in a case. */
  private long counting(int variant, int caseNumber) {
    long known = counting[variant][caseNumber];
    if (known == 0) {
      known = IntStream.range(0, drawn).filter(
          sample -> installations.variant(sample) == variant && installations.weight(caseNumber, sample) > 0).count();
      counting[variant][caseNumber] = known;
    }
    return known;
  }

  private int[] noWitness() {
    int[] none = new int[cases];
    Arrays.fill(none, -1);
    return none;
  }

  public List<Arrivals> all() {
    return List.copyOf(byEnd.values());
  }
}
