package rungbook.proof.accounting;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rungbook.circuit.Reading;

/** What the readings of one check say about one of its limits. */
public final class LimitTally {

  private final MeterError.Rectangular error;
  private final double digit;
  private final double edge;
  private final BitSet mustBelow;
  private final BitSet mustAbove;
  private final int drawn;
  private final int segment;
  private final double[] misrouted;
  private final double[] arrived;
  private final int[] witness;
  private final double[] witnessReading;
  private final double[] worst;
  private @Nullable Extreme highestBelow;
  private @Nullable Extreme lowestAbove;
  private double mostBelow = Double.NEGATIVE_INFINITY;
  private double leastAbove = Double.POSITIVE_INFINITY;

  /**
   * @param segment the one that begins at the limit
   * @param mustBelow cases that have to read less than the limit
   */
  LimitTally(Segments segments, int segment, MeterError.Rectangular error, double digit, BitSet mustBelow,
      BitSet mustAbove, int cases, int drawn) {
    this.segment = segment;
    this.edge = segments.edge(segment);
    this.error = error;
    this.digit = digit;
    this.mustBelow = mustBelow;
    this.mustAbove = mustAbove;
    this.drawn = drawn;
    misrouted = new double[cases];
    arrived = new double[cases];
    worst = new double[cases];
    witnessReading = new double[cases];
    witness = new int[cases];
    Arrays.fill(witness, -1);
  }

  /**
   * The healthy system belongs on the side of the expected window; where the limit cuts through the window, on the side
   * where most healthy systems read.
   */
  void assignHealthy(double[] readings, double[] weights) {
    if (concerns(0)) {
      return;
    }
    double below = 0;
    double all = 0;
    for (int sample = 0; sample < drawn; sample++) {
      below += ReadingSplit.shownAbout(readings[sample]) < edge ? weights[sample] : 0;
      all += weights[sample];
    }
    (2 * below > all ? mustBelow : mustAbove).set(0);
  }

  boolean concerns(int caseNumber) {
    return mustBelow.get(caseNumber) || mustAbove.get(caseNumber);
  }

  public boolean mustBelow(int caseNumber) {
    return mustBelow.get(caseNumber);
  }

  void add(int caseNumber, double[] readings, double[] weights) {
    for (int sample = 0; sample < weights.length; sample++) {
      boolean read = readings[sample] >= 0 || readings[sample] == Reading.FLOATING;
      if (weights[sample] > 0 && read) {
        add(caseNumber, sample, ReadingSplit.shownAbout(readings[sample]), weights[sample],
            readings[sample] == Reading.FLOATING);
      }
    }
  }

  private void add(int caseNumber, int sample, double value, double weight, boolean floating) {
    boolean below = mustBelow(caseNumber);
    double a = floating || value == Double.POSITIVE_INFINITY ? 0 : error.halfWidth(value);
    double shownBelow = floating ? (value < edge ? 1 : 0)
        : value == Double.POSITIVE_INFINITY ? 0 : error.below(value, edge);
    double wrong = below ? 1 - shownBelow : shownBelow;
    if (sample < drawn) {
      arrived[caseNumber] += weight;
      misrouted[caseNumber] += weight * wrong;
    }
    if (wrong > worst[caseNumber] + 1e-12 && (sample < drawn || witness[caseNumber] < 0)) {
      worst[caseNumber] = wrong;
      witness[caseNumber] = sample;
      witnessReading[caseNumber] = value;
    }
    bound(below, caseNumber, sample, value, count(below ? value + a : value - a));
  }

  private void bound(boolean below, int caseNumber, int sample, double value, long shown) {
    if (below) {
      mostBelow = Math.max(mostBelow, value);
      if (highestBelow == null || shown > highestBelow.shown()) {
        highestBelow = new Extreme(caseNumber, sample, value, shown);
      }
    } else {
      leastAbove = Math.min(leastAbove, value);
      if (lowestAbove == null || shown < lowestAbove.shown()) {
        lowestAbove = new Extreme(caseNumber, sample, value, shown);
      }
    }
  }

  private long count(double value) {
    return value == Double.POSITIVE_INFINITY ? Long.MAX_VALUE : Math.round(value / digit);
  }

  /** The segment that begins at the limit. */
  public int segment() {
    return segment;
  }

  /** The weight of the case's random installations that may go the wrong way. */
  public double misrouted(int caseNumber) {
    return misrouted[caseNumber];
  }

  /** The same as a share of those that come to the check. */
  public double misroutedShare(int caseNumber) {
    return arrived[caseNumber] == 0 ? 0 : misrouted[caseNumber] / arrived[caseNumber];
  }

  /** The sample that most likely goes the wrong way; −1 if none does. */
  public int witness(int caseNumber) {
    return witness[caseNumber];
  }

  /** What that sample reads. */
  public double witnessReading(int caseNumber) {
    return witnessReading[caseNumber];
  }

  public Optional<Extreme> highestBelow() {
    return Optional.ofNullable(highestBelow);
  }

  public Optional<Extreme> lowestAbove() {
    return Optional.ofNullable(lowestAbove);
  }

  /** Whether a meter without any error could separate the two sides. */
  public boolean separable() {
    return mostBelow < leastAbove;
  }

  public double mostBelow() {
    return mostBelow;
  }

  public double leastAbove() {
    return leastAbove;
  }
}
